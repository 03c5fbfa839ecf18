package frond.home.duties.leaving

import android.app.Activity
import android.app.Dialog
import android.content.Context
import android.os.Build
import android.text.InputType
import android.view.ActionMode
import android.view.Menu
import android.view.MenuItem
import android.view.View
import android.view.Window
import android.view.WindowManager.LayoutParams.FLAG_SECURE
import android.view.inputmethod.EditorInfo
import android.view.textclassifier.TextClassifier
import android.widget.EditText
import frond.home.Newer

/**
 * What keeps screens out of sight of everything but the person in front of them. Decides what every window, every dialog
 * and every text field gets; who lays out screens has only to call it.
 */
object Cover {
    /** The app's window: before anything is drawn in it. */
    fun activity(activity: Activity) {
        window(activity.window)
        if (Build.VERSION.SDK_INT >= Build.VERSION_CODES.TIRAMISU) noPicture(activity)
    }

    /** Any dialog of ours: before it is shown. It is a window of its own, and covered by nothing that covers the app's. */
    fun dialog(dialog: Dialog) {
        dialog.window?.let(::window)
    }

    /**
     * Whether touches through another program's window are dropped. So they are, but not where a practice runs or whom to
     * call is shown: a program that dims the screen lies over everything, and must not keep anyone from stopping.
     */
    fun touches(window: Window, dropped: Boolean) {
        window.decorView.filterTouchesWhenObscured = dropped
    }

    private fun window(window: Window) {
        // No pictures of the screen, no recording, nothing in the list of open apps, nothing for an assistant.
        window.addFlags(FLAG_SECURE)
        touches(window, dropped = true)
        window.decorView.importantForAutofill = View.IMPORTANT_FOR_AUTOFILL_NO_EXCLUDE_DESCENDANTS
        if (Build.VERSION.SDK_INT >= Build.VERSION_CODES.R) notCaptured(window.decorView)
    }

    /** From Android 13: the list of open apps takes no picture at all. */
    @Newer
    private fun noPicture(activity: Activity) = activity.setRecentsScreenshotEnabled(false)

    /** From Android 11: the system collects nothing of what is shown. */
    @Newer
    private fun notCaptured(view: View) {
        view.importantForContentCapture = View.IMPORTANT_FOR_CONTENT_CAPTURE_NO_EXCLUDE_DESCENDANTS
    }

    /** A field for her own words: the keyboard is asked to learn nothing, and the phone to make nothing of what is typed. */
    fun ownWords(field: EditText) {
        field.imeOptions = field.imeOptions or EditorInfo.IME_FLAG_NO_PERSONALIZED_LEARNING or
            EditorInfo.IME_FLAG_NO_EXTRACT_UI
        field.importantForAutofill = View.IMPORTANT_FOR_AUTOFILL_NO
        field.setTextClassifier(TextClassifier.NO_OP)
    }
}

/**
 * A field for a code, a passphrase or the twelve words: besides, nothing can be copied, cut, shared or dragged out of it,
 * the keyboard is asked for no suggestions, and nothing of it is kept in a saved state.
 */
class SecretField(context: Context) : EditText(context) {
    init {
        Cover.ownWords(this)
        inputType = InputType.TYPE_CLASS_TEXT or InputType.TYPE_TEXT_FLAG_NO_SUGGESTIONS or
            InputType.TYPE_TEXT_VARIATION_VISIBLE_PASSWORD
        isLongClickable = false
        isSaveEnabled = false
        customSelectionActionModeCallback = NothingOut
        customInsertionActionModeCallback = NothingOut
    }

    override fun onTextContextMenuItem(id: Int): Boolean = id in OUT || super.onTextContextMenuItem(id)

    // Keyboards and screen readers ask in this way too.
    override fun onDragEvent(event: android.view.DragEvent?): Boolean = false

    private object NothingOut : ActionMode.Callback {
        override fun onCreateActionMode(mode: ActionMode, menu: Menu): Boolean = true

        override fun onPrepareActionMode(mode: ActionMode, menu: Menu): Boolean {
            OUT.forEach(menu::removeItem)
            return true
        }

        override fun onActionItemClicked(mode: ActionMode, item: MenuItem): Boolean = item.itemId in OUT

        override fun onDestroyActionMode(mode: ActionMode) = Unit
    }

    private companion object {
        val OUT = setOf(android.R.id.copy, android.R.id.cut, android.R.id.shareText)
    }
}
