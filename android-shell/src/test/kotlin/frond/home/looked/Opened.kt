package frond.home.looked

import android.os.Bundle
import android.os.Looper
import android.view.View
import android.widget.TextView
import frond.core.FormWords
import frond.home.MainActivity
import frond.home.R
import org.junit.Assert.assertEquals
import org.robolectric.Robolectric
import org.robolectric.RuntimeEnvironment
import org.robolectric.Shadows.shadowOf
import org.robolectric.android.controller.ActivityController
import java.time.Duration
import java.util.concurrent.TimeUnit

/** The app, opened on a phone that looks like this, with the real core behind it. */
class Opened(val shown: Shown = Shown.LIGHT, state: Bundle? = null) {
    val app: TestApp
    var controller: ActivityController<MainActivity>
    val activity: MainActivity get() = controller.get()

    init {
        shown.set()
        app = RuntimeEnvironment.getApplication() as TestApp
        val built = Robolectric.buildActivity(MainActivity::class.java)
        controller = if (state == null) built.setup() else built.setup(state)
        settle()
    }

    /** Waits until everything that was asked has been answered and shown. */
    fun settle() {
        repeat(8) {
            app.behind.submit {}.get(60, TimeUnit.SECONDS)
            app.beside.submit {}.get(60, TimeUnit.SECONDS)
            shadowOf(Looper.getMainLooper()).idle()
        }
    }

    /** Time goes by, in steps as a clock has them. */
    fun pass(time: Duration) {
        var left = time
        while (left > Duration.ZERO) {
            val step = minOf(left, Duration.ofSeconds(5))
            shadowOf(Looper.getMainLooper()).idleFor(step)
            settle()
            left -= step
        }
    }

    /** The words of the phone's own controls. */
    val words: FormWords get() = checkNotNull(activity.ways.words) { "nothing is shown" }

    fun texts(): List<TextView> = all(activity.window.decorView).filterIsInstance<TextView>().filter { it.isShown }

    /** What is said, without the marks and isolates of direction that the mirrored language has (Unicode Standard Annex 9). */
    fun plain(): List<String> = texts().map { it.text.toString().replace(MARKS, "") }

    val title: String get() = texts().single { it.id == R.id.title }.text.toString()

    fun says(text: String): Boolean = texts().any { text in it.text.toString() }

    /** Presses what has these words. */
    fun press(words: String) {
        val found = texts().filter { it.isClickable && it.text.toString() == words }
        check(found.size == 1) { "\"$words\" is there ${found.size} times on \"$title\": ${texts().filter { it.isClickable }.map { it.text }}" }
        found.single().performClick()
        settle()
    }

    /** A picture, and everything that must hold of every screen. */
    fun looked(name: String) {
        val frame = checkNotNull(activity.window.decorView.findViewById<View>(R.id.frame)) { "$name: no frame" }
        // A look that is not the one asked for would be looked at in vain.
        assertEquals(name, shown.language, frame.resources.configuration.locales[0].toLanguageTag())
        assertEquals(name, shown == Shown.MIRRORED, frame.layoutDirection == View.LAYOUT_DIRECTION_RTL)
        activity.looked(name, shown)
    }

    private companion object {
        val MARKS = Regex("[\\u200E\\u200F\\u202A-\\u202E\\u2066-\\u2069]")
    }
}
