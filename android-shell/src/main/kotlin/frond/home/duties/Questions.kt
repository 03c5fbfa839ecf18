package frond.home.duties

import android.app.Activity
import android.app.AlertDialog
import android.text.SpannableString
import android.text.Spanned
import android.text.style.TtsSpan
import android.util.TypedValue
import android.view.Gravity
import android.view.View
import android.widget.TextView
import frond.core.FormWords
import frond.home.R
import frond.home.duties.files.LeavingFile
import frond.home.duties.files.OpenFile
import frond.home.duties.files.SealedFile
import frond.home.duties.leaving.Cover
import frond.home.duties.senses.Dialler

/** The few questions that the phone's duties ask by themselves. Each is a window of its own, and covered. */
internal class Questions(private val activity: Activity) {
    private var open: AlertDialog? = null

    /** Where a file shall go. A plain file is never offered to another app: only a place for it. */
    fun whither(file: LeavingFile, words: FormWords, save: () -> Unit, share: (SealedFile) -> Unit, not: () -> Unit) {
        val files = words.files
        val asks = AlertDialog.Builder(activity).setTitle(files.whither)
            .setNegativeButton(words.frame.notNow) { _, _ -> not() }
            .setOnCancelListener { not() }
            .setPositiveButton(files.save) { _, _ -> save() }
        when (file) {
            is SealedFile -> asks.setMessage(files.sealed + "\n\n" + files.nobodyTold)
                .setNeutralButton(files.share) { _, _ -> share(file) }
            is OpenFile -> asks.setMessage(files.unsealed + "\n\n" + files.nobodyTold)
        }
        show(asks, words)
    }

    /** A phone without a dialler: the number, large, and said digit by digit. */
    fun number(number: String, words: FormWords) {
        val shown = TextView(activity).apply {
            text = SpannableString(number).apply {
                setSpan(TtsSpan.TelephoneBuilder(number).build(), 0, length, Spanned.SPAN_INCLUSIVE_INCLUSIVE)
            }
            contentDescription = Dialler.spoken(number)
            setTextSize(TypedValue.COMPLEX_UNIT_PX, resources.getDimension(R.dimen.text_large))
            setTextColor(activity.getColor(R.color.text))
            // A number is read from left to right in every language.
            textDirection = View.TEXT_DIRECTION_LTR
            gravity = Gravity.CENTER
            val space = resources.getDimensionPixelSize(R.dimen.space_5)
            setPadding(space, space, space, space)
            accessibilityLiveRegion = View.ACCESSIBILITY_LIVE_REGION_ASSERTIVE
        }
        val says = AlertDialog.Builder(activity).setMessage(words.files.noCalls).setView(shown)
            .setPositiveButton(words.frame.close, null)
        show(says, words)
    }

    /** The window goes: so does the question, unanswered. */
    fun end() {
        open?.dismiss()
        open = null
    }

    private fun show(asks: AlertDialog.Builder, words: FormWords) {
        end()
        val dialog = asks.create()
        Cover.dialog(dialog)
        dialog.window?.decorView?.layoutDirection = if (words.rightToLeft) View.LAYOUT_DIRECTION_RTL else View.LAYOUT_DIRECTION_LTR
        open = dialog
        dialog.show()
    }
}
