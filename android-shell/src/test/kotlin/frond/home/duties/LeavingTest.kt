package frond.home.duties

import android.app.Activity
import android.app.AlertDialog
import android.app.Dialog
import android.content.ClipData
import android.content.ClipboardManager
import android.content.Context
import android.content.Intent
import android.os.Looper
import android.os.SystemClock
import android.view.View
import android.view.WindowManager.LayoutParams.FLAG_SECURE
import android.view.accessibility.AccessibilityNodeInfo
import android.view.inputmethod.EditorInfo
import android.view.textclassifier.TextClassifier
import android.widget.EditText
import frond.home.duties.leaving.Clip
import frond.home.duties.leaving.Cover
import frond.home.duties.leaving.LockClock
import frond.home.duties.leaving.QuickExit
import frond.home.duties.leaving.SecretField
import frond.home.looked.FrondRunner
import org.junit.Assert.assertEquals
import org.junit.Assert.assertFalse
import org.junit.Assert.assertNull
import org.junit.Assert.assertTrue
import org.junit.Test
import org.junit.runner.RunWith
import org.robolectric.Robolectric
import org.robolectric.RuntimeEnvironment
import org.robolectric.Shadows.shadowOf
import java.util.concurrent.TimeUnit

/** Leaving at once, the cover over the window, and what may not be learned, copied or seen by others. */
@RunWith(FrondRunner::class)
class LeavingTest {
    private val context: Context = RuntimeEnvironment.getApplication()
    private val activity = Robolectric.buildActivity(Left::class.java).setup().get()
    private val board = context.getSystemService(ClipboardManager::class.java)

    /** Notes that its task was to go from the list of open apps, because Robolectric keeps no such list. */
    class Left : Activity() {
        var removed = false

        override fun finishAndRemoveTask() {
            removed = true
            super.finishAndRemoveTask()
        }
    }

    private fun idle() = shadowOf(Looper.getMainLooper()).idle()

    // Leaving at once.

    @Test
    fun `quick exit goes home, leaves the list of open apps, and the next opening shows nothing first`() {
        assertNull(QuickExit.wasLeft(context))
        val words = QuickExit.Words("Closed", "Open")
        QuickExit.leave(activity, words)
        val home = shadowOf(activity).nextStartedActivity
        assertEquals(Intent.ACTION_MAIN, home.action)
        assertTrue(Intent.CATEGORY_HOME in home.categories)
        assertTrue(activity.isFinishing)
        assertTrue("the task is gone from the list", activity.removed)
        assertEquals(words, QuickExit.wasLeft(context))
        QuickExit.opened(context)
        assertNull(QuickExit.wasLeft(context))
    }

    // Out of sight.

    private fun secure(flags: Int) = flags and FLAG_SECURE != 0

    @Test
    fun `the window is covered, in pictures of the screen and in the list of open apps`() {
        Cover.activity(activity)
        assertTrue(secure(activity.window.attributes.flags))
        assertTrue("touches through another window are dropped", activity.window.decorView.filterTouchesWhenObscured)
        assertEquals(View.IMPORTANT_FOR_AUTOFILL_NO_EXCLUDE_DESCENDANTS, activity.window.decorView.importantForAutofill)
        Cover.touches(activity.window, dropped = false)
        assertFalse("a dimmed screen keeps nobody from stopping", activity.window.decorView.filterTouchesWhenObscured)
        assertTrue(secure(activity.window.attributes.flags))
    }

    @Test
    fun `a dialog is a window of its own and is covered too`() {
        for (dialog in listOf<Dialog>(AlertDialog.Builder(activity).setTitle("a").create(), Dialog(activity))) {
            Cover.dialog(dialog)
            dialog.show()
            assertTrue(secure(dialog.window!!.attributes.flags))
        }
    }

    // What is typed.

    @Test
    fun `the keyboard is asked to learn nothing from her own words`() {
        val field = EditText(activity)
        Cover.ownWords(field)
        assertTrue(field.imeOptions and EditorInfo.IME_FLAG_NO_PERSONALIZED_LEARNING != 0)
        assertEquals(View.IMPORTANT_FOR_AUTOFILL_NO, field.importantForAutofill)
        assertEquals(TextClassifier.NO_OP, field.textClassifier)
    }

    @Test
    fun `nothing can be copied out of a secret field by hand, keyboard or screen reader`() {
        val field = SecretField(activity)
        activity.setContentView(field)
        field.setText("witch collapse practice feed")
        field.requestFocus()
        field.selectAll()
        idle()
        for (id in listOf(android.R.id.copy, android.R.id.cut, android.R.id.shareText)) {
            assertTrue("said to be done, and not done", field.onTextContextMenuItem(id))
        }
        field.performAccessibilityAction(AccessibilityNodeInfo.ACTION_COPY, null)
        field.performAccessibilityAction(AccessibilityNodeInfo.ACTION_CUT, null)
        idle()
        assertFalse(board.hasPrimaryClip())
        assertEquals("witch collapse practice feed", field.text.toString())
        assertFalse("no dragging either", field.isLongClickable)
        assertFalse("nothing in a saved state", field.isSaveEnabled)
        assertTrue(field.imeOptions and EditorInfo.IME_FLAG_NO_PERSONALIZED_LEARNING != 0)
    }

    @Test
    fun `an ordinary field would have been copied from, so the check above can fail`() {
        val field = EditText(activity)
        activity.setContentView(field)
        field.setText("plain")
        field.requestFocus()
        field.selectAll()
        field.onTextContextMenuItem(android.R.id.copy)
        assertEquals("plain", board.primaryClip!!.getItemAt(0).text.toString())
    }

    // The clipboard.

    @Test
    fun `what is copied is marked as sensitive`() {
        Clip(context).copy("FROND:AEBAGBA")
        assertTrue(board.primaryClipDescription!!.extras!!.getBoolean(android.content.ClipDescription.EXTRA_IS_SENSITIVE))
        assertEquals("", board.primaryClipDescription!!.label.toString())
    }

    @Test
    fun `a link is taken off after it was pasted, and what is hers stays`() {
        val clip = Clip(context)
        board.setPrimaryClip(ClipData.newPlainText("", "see FROND:AEBAGBA"))
        assertEquals("see FROND:AEBAGBA", clip.pasted().toString())
        assertTrue(clip.linkTaken())
        assertFalse(board.hasPrimaryClip())
        assertNull(clip.pasted())
        board.setPrimaryClip(ClipData.newPlainText("", "a shopping list"))
        assertFalse(clip.linkTaken())
        assertEquals("a shopping list", clip.pasted().toString())
    }

    // The lock.

    private var locked = 0
    private var hasCode = true
    private var after = AFTER
    private val lock = LockClock(context, { hasCode }, { locked++ }, { after })

    private fun pass(millis: Long) = shadowOf(Looper.getMainLooper()).idleFor(millis, TimeUnit.MILLISECONDS)

    @Test
    fun `it locks when the screen goes off`() {
        lock.begin()
        context.sendBroadcast(Intent(Intent.ACTION_SCREEN_OFF))
        idle()
        assertEquals(1, locked)
        lock.end()
        context.sendBroadcast(Intent(Intent.ACTION_SCREEN_OFF))
        idle()
        assertEquals(1, locked)
    }

    @Test
    fun `it locks after a while behind other programs, and not for a short look elsewhere`() {
        lock.begin()
        lock.inFront()
        lock.behind()
        pass(AFTER - 1000)
        lock.inFront()
        assertEquals(0, locked)
        pass(AFTER * 2)
        assertEquals("in front it does not lock", 0, locked)
        lock.behind()
        pass(AFTER)
        assertEquals(1, locked)
        lock.inFront()
        assertEquals("once is enough", 1, locked)
    }

    @Test
    fun `a frozen process locks before it shows anything again`() {
        lock.begin()
        lock.behind()
        // Time goes by, and nothing runs.
        SystemClock.setCurrentTimeMillis(SystemClock.uptimeMillis() + AFTER + 1)
        lock.inFront()
        assertEquals(1, locked)
    }

    @Test
    fun `at once is at once`() {
        after = 0
        lock.begin()
        lock.inFront()
        lock.behind()
        idle()
        assertEquals(1, locked)
    }

    @Test
    fun `without a code nothing locks`() {
        hasCode = false
        lock.begin()
        context.sendBroadcast(Intent(Intent.ACTION_SCREEN_OFF))
        lock.behind()
        pass(AFTER * 2)
        lock.inFront()
        assertEquals(0, locked)
    }

    private companion object {
        const val AFTER = 2 * 60 * 1000L
    }
}
