package frond.home.screens

import android.os.SystemClock
import android.widget.EditText
import android.widget.TextView
import com.sun.jna.Library
import com.sun.jna.Native
import com.sun.jna.Structure
import frond.core.Covered
import frond.core.Does
import frond.core.Frond
import frond.core.KeyKeeper
import frond.core.Moment
import frond.core.WholeRequest
import frond.home.looked.FrondRunner
import frond.home.looked.Person
import frond.home.looked.Shown
import frond.home.looked.Opened
import frond.home.looked.SoftKeeper
import frond.home.looked.TestApp
import frond.home.looked.all
import org.junit.Assert.assertEquals
import org.junit.Assert.assertFalse
import org.junit.Assert.assertTrue
import org.junit.Test
import org.junit.runner.RunWith
import org.robolectric.RuntimeEnvironment
import java.io.File
import java.util.zip.CRC32C

/**
 * What goes wrong beneath the screens, with the real core and the real disk: each trouble reaches a screen that says what to
 * do, and none shows the inside of the program. The full disk is simulated: the system's limit on the size of files of this
 * process is lowered, so that the real writes fail in the system itself; no disk was filled.
 */
@RunWith(FrondRunner::class)
class AcrossTheBorderTest {
    private val app get() = RuntimeEnvironment.getApplication() as TestApp
    private val diary get() = app.noBackupFilesDir.resolve("diary")

    /** Everything that can be read or is spoken. */
    private fun read(on: Opened): String = all(on.activity.window.decorView).filterIsInstance<TextView>()
        .flatMap { listOfNotNull(it.text, it.contentDescription) }.joinToString("\n")

    private fun saysNothingOfTheInside(on: Opened) {
        val text = read(on)
        for (inside in listOf("Exception", "invented-inside", "frond.", ".kt", ".rs", "panick", "keeper")) {
            assertFalse("$inside in: $text", inside in text)
        }
    }

    private fun begun(shown: Shown = Shown.LIGHT): Person {
        val she = Person(Opened(shown))
        she.press(Does.StartNew)
        she.press(Does.Today)
        she.press(Does.Questions)
        she.type("text", "An invented question, kept before the trouble.")
        she.press(SEND)
        return she
    }

    /** The process ends and another begins. */
    private fun later(shown: Shown = Shown.LIGHT): Person {
        app.newProcess()
        return Person(Opened(shown))
    }

    /** A fault that is met on the way, in every look: each with a diary, a key store and a process of its own. */
    private fun inEveryLook(act: (Shown) -> Unit) {
        for (shown in Shown.entries) {
            app.newProcess()
            checkNotNull(app.noBackupFilesDir.listFiles()).forEach(File::deleteRecursively)
            app.keeper = SoftKeeper()
            act(shown)
        }
    }

    /** Whether this is said, in whichever language the look has. */
    private fun Opened.saysSo(english: String, spanish: String): Boolean =
        plain().any { english in it || spanish in it }

    /** What stands in the way of a diary, in every look; each time in a process of its own. */
    private fun everywhere(name: String) {
        for (shown in Shown.entries) {
            app.newProcess()
            with(Opened(shown)) {
                looked(name)
                controller.pause().stop().destroy()
            }
        }
    }

    @Test
    fun `a key store that throws when a diary is begun`() = inEveryLook { shown ->
        val keeper = Throwing()
        app.keeper = keeper
        val she = Person(Opened(shown))
        keeper.throws = true
        she.press(Does.StartNew)
        saysNothingOfTheInside(she.opened)
        she.opened.looked("c01-keeper-throws-begin")
        keeper.throws = false
        if (she.sees(Does.Today)) she.press(Does.Today)
        she.press(Does.StartNew)
        she.press(Does.Today)
        assertTrue("nothing stands in the way afterwards", she.sees(Does.More))
    }

    @Test
    fun `a key store that throws when the diary is opened`() = inEveryLook { shown ->
        val keeper = Throwing()
        app.keeper = keeper
        begun(shown)
        keeper.throws = true
        val she = later(shown)
        saysNothingOfTheInside(she.opened)
        she.opened.looked("c02-keeper-throws-open")
        assertTrue("it can be tried again", she.sees(Does.Today))
        keeper.throws = false
        she.press(Does.Today)
        assertTrue("and then it opens", she.sees(Does.More))
    }

    @Test
    fun `a disk that is full`() = inEveryLook { shown ->
        val she = begun(shown)
        val freeSpace = { she.opened.saysSo("Free some space", "Libera algo de espacio") }
        // Room for what is coming was made ahead, so some entries can still be kept; the one behind them cannot.
        val long = "An invented question for a full disk. ".repeat(24).trim()
        full(diary.resolve("journal").length()) {
            var kept = 0
            while (!freeSpace()) {
                check(kept++ < 200) { "the disk is never full" }
                she.type("text", long)
                she.press(SEND)
            }
            saysNothingOfTheInside(she.opened)
            assertEquals("nothing typed is lost", long, she.typed("text"))
        }
        // Pictures are files, too: taken once there is room again, and of the screen that is still shown.
        assertTrue("it still says so", freeSpace())
        she.opened.looked("c03-disk-full")
        val before = she.opened.texts().count { it.text.toString() == long && it !is EditText }
        she.press(SEND)
        assertEquals("with room again it is kept, once", before + 1, she.opened.texts().count { it.text.toString() == long && it !is EditText })
        assertEquals("", she.typed("text"))
    }

    @Test
    fun `a disk that fails in the middle of an entry`() = inEveryLook { shown ->
        val she = begun(shown)
        she.type("text", "An invented question that may be there.")
        full(0) { she.press(SEND) }
        saysNothingOfTheInside(she.opened)
        she.opened.looked("c10-disk-failed")
        assertTrue("it says what to do", she.opened.saysSo("look whether your last entry is there", "mira si está tu última anotación"))
        assertEquals("nothing typed is lost", "An invented question that may be there.", she.typed("text"))
        she.press(SEND)
        assertEquals("once", 1, she.opened.texts().count { "may be there" in it.text })
    }

    @Test
    fun `a diary whose bytes were changed`() {
        begun()
        val journal = diary.resolve("journal")
        val bytes = journal.readBytes()
        // Behind the two copies of the header, inside the first entries.
        for (at in 8192 + 64 until 8192 + 96) bytes[at] = (bytes[at] + 1).toByte()
        journal.writeBytes(bytes)
        val she = later()
        saysNothingOfTheInside(she.opened)
        assertTrue("it leads to how the diary is kept", she.sees(Does.Keeping))
        everywhere("c04-damaged")
        for (shown in Shown.entries) with(later(shown)) {
            press(Does.Keeping)
            opened.looked("c05-damaged-keeping")
        }
    }

    @Test
    fun `keys that cannot be read`() {
        begun()
        val keys = diary.resolve("keys")
        keys.writeBytes(ByteArray(keys.length().toInt()) { 7 })
        val she = later()
        saysNothingOfTheInside(she.opened)
        assertTrue("a copy can be restored", she.sees(Does.Restore) || she.sees(Does.RestoreCopy))
        everywhere("c06-keys-damaged")
    }

    @Test
    fun `a diary of a newer Frond`() {
        begun()
        val journal = diary.resolve("journal")
        val bytes = journal.readBytes()
        newer(bytes)
        journal.writeBytes(bytes)
        val she = later()
        saysNothingOfTheInside(she.opened)
        assertTrue("nothing was touched", bytes.contentEquals(journal.readBytes()))
        assertFalse("and nothing offers to replace it", she.sees(Does.StartNew))
        everywhere("c07-newer")
    }

    @Test
    fun `a diary that is open elsewhere`() {
        begun()
        app.newProcess()
        val other = Frond(diary.path, "en", Covered(true, true, true, true, true, true), app.keeper)
        other.use {
            it.whole(WholeRequest.Begin, now())
            val she = Person(Opened())
            saysNothingOfTheInside(she.opened)
            assertTrue("it can be tried again", she.sees(Does.Today))
            everywhere("c08-open-elsewhere")
        }
    }

    @Test
    fun `a key that is gone`() {
        begun()
        app.keeper.forget()
        val she = later()
        saysNothingOfTheInside(she.opened)
        assertTrue("the twelve words may open it", she.sees(Does.OpenByPhrase))
        everywhere("c09-key-gone")
    }

    private fun now() = Moment(1_772_442_000_000, "Europe/Madrid", 60, 1u, SystemClock.elapsedRealtime().toULong())

    /** Raises the format number of both copies of a header and makes their checksums true again (core/src/diary/store/FORMAT.md). */
    private fun newer(bytes: ByteArray) {
        for (begin in listOf(0, 4096)) {
            bytes[begin + 4] = 2
            val sum = CRC32C().apply { update(bytes, begin, 4092) }.value
            for (at in 0..3) bytes[begin + 4092 + at] = (sum shr (8 * at)).toByte()
        }
    }

    /** A key keeper that throws something of its own kind, with something to say, while asked to. */
    private class Throwing(private val inside: SoftKeeper = SoftKeeper()) : KeyKeeper by inside {
        var throws = false

        override fun wrap(key: ByteArray): ByteArray = if (throws) throw IllegalStateException("invented-inside") else inside.wrap(key)

        override fun unwrap(wrap: ByteArray): ByteArray = if (throws) throw IllegalStateException("invented-inside") else inside.unwrap(wrap)
    }

    private interface System : Library {
        fun getrlimit(resource: Int, limit: Limit): Int
        fun setrlimit(resource: Int, limit: Limit): Int
    }

    @Structure.FieldOrder("now", "most")
    class Limit : Structure() {
        @JvmField var now: Long = 0
        @JvmField var most: Long = 0
    }

    /** Meanwhile no file of this process can be written behind this size (setrlimit(2), RLIMIT_FSIZE: writes end in EFBIG). */
    private fun full(size: Long, act: () -> Unit) {
        val system = Native.load("c", System::class.java)
        val limit = Limit()
        check(system.getrlimit(FILE_SIZE, limit) == 0)
        val before = limit.now
        limit.now = size
        check(system.setrlimit(FILE_SIZE, limit) == 0)
        try {
            check(!writes(size + 1)) { "the limit does not hold" }
            act()
        } finally {
            limit.now = before
            check(system.setrlimit(FILE_SIZE, limit) == 0)
        }
    }

    private fun writes(bytes: Long): Boolean = try {
        File.createTempFile("full", null, app.cacheDir).writeBytes(ByteArray(bytes.toInt()))
        true
    } catch (_: java.io.IOException) {
        false
    }

    private companion object {
        /** RLIMIT_FSIZE of Linux. */
        const val FILE_SIZE = 1
    }
}
