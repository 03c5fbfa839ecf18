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
import frond.home.looked.Hand
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

    private fun begun(): Hand {
        val hand = Hand(Opened())
        hand.press(Does.StartNew)
        hand.press(Does.Today)
        hand.press(Does.Questions)
        hand.type("text", "An invented question, kept before the trouble.")
        hand.press(SEND)
        return hand
    }

    /** The process ends and another begins. */
    private fun later(): Hand {
        app.newProcess()
        return Hand(Opened())
    }

    @Test
    fun `a key store that throws when a diary is begun`() {
        val keeper = Throwing()
        app.keeper = keeper
        val hand = Hand(Opened())
        keeper.throws = true
        hand.press(Does.StartNew)
        saysNothingOfTheInside(hand.on)
        hand.on.looked("c01-keeper-throws-begin")
        keeper.throws = false
        if (hand.there(Does.Today)) hand.press(Does.Today)
        hand.press(Does.StartNew)
        hand.press(Does.Today)
        assertTrue("nothing stands in the way afterwards", hand.there(Does.More))
    }

    @Test
    fun `a key store that throws when the diary is opened`() {
        val keeper = Throwing()
        app.keeper = keeper
        begun()
        keeper.throws = true
        val hand = later()
        saysNothingOfTheInside(hand.on)
        hand.on.looked("c02-keeper-throws-open")
        assertTrue("it can be tried again", hand.there(Does.Today))
        keeper.throws = false
        hand.press(Does.Today)
        assertTrue("and then it opens", hand.there(Does.More))
    }

    @Test
    fun `a disk that is full`() {
        val hand = begun()
        // Room for what is coming was made ahead, so some entries can still be kept; the one behind them cannot.
        val long = "An invented question for a full disk. ".repeat(24).trim()
        full(diary.resolve("journal").length()) {
            var kept = 0
            while (!hand.on.says("Free some space")) {
                check(kept++ < 200) { "the disk is never full" }
                hand.type("text", long)
                hand.press(SEND)
            }
            saysNothingOfTheInside(hand.on)
            hand.on.looked("c03-disk-full")
            assertEquals("nothing typed is lost", long, hand.edit("text").text.toString())
        }
        val before = hand.on.texts().count { it.text.toString() == long && it !is EditText }
        hand.press(SEND)
        assertEquals("with room again it is kept, once", before + 1, hand.on.texts().count { it.text.toString() == long && it !is EditText })
        assertEquals("", hand.edit("text").text.toString())
    }

    @Test
    fun `a disk that fails in the middle of an entry`() {
        val hand = begun()
        hand.type("text", "An invented question that may be there.")
        full(0) { hand.press(SEND) }
        saysNothingOfTheInside(hand.on)
        hand.on.looked("c10-disk-failed")
        assertTrue("it says what to do", hand.on.says("look whether your last entry is there"))
        assertEquals("nothing typed is lost", "An invented question that may be there.", hand.edit("text").text.toString())
        hand.press(SEND)
        assertEquals("once", 1, hand.on.texts().count { "may be there" in it.text })
    }

    @Test
    fun `a diary whose bytes were changed`() {
        begun()
        val journal = diary.resolve("journal")
        val bytes = journal.readBytes()
        // Behind the two copies of the header, inside the first entries.
        for (at in 8192 + 64 until 8192 + 96) bytes[at] = (bytes[at] + 1).toByte()
        journal.writeBytes(bytes)
        val hand = later()
        saysNothingOfTheInside(hand.on)
        hand.on.looked("c04-damaged")
        assertTrue("it leads to how the diary is kept", hand.there(Does.Keeping))
        hand.press(Does.Keeping)
        hand.on.looked("c05-damaged-keeping")
    }

    @Test
    fun `keys that cannot be read`() {
        begun()
        val keys = diary.resolve("keys")
        keys.writeBytes(ByteArray(keys.length().toInt()) { 7 })
        val hand = later()
        saysNothingOfTheInside(hand.on)
        hand.on.looked("c06-keys-damaged")
        assertTrue("a copy can be restored", hand.there(Does.Restore) || hand.there(Does.RestoreCopy))
    }

    @Test
    fun `a diary of a newer Frond`() {
        begun()
        val journal = diary.resolve("journal")
        val bytes = journal.readBytes()
        newer(bytes)
        journal.writeBytes(bytes)
        val hand = later()
        saysNothingOfTheInside(hand.on)
        hand.on.looked("c07-newer")
        assertTrue("nothing was touched", bytes.contentEquals(journal.readBytes()))
        assertFalse("and nothing offers to replace it", hand.there(Does.StartNew))
    }

    @Test
    fun `a diary that is open elsewhere`() {
        begun()
        app.newProcess()
        val other = Frond(diary.path, "en", Covered(true, true, true, true, true), app.keeper)
        other.use {
            it.whole(WholeRequest.Begin, now())
            val hand = Hand(Opened())
            saysNothingOfTheInside(hand.on)
            hand.on.looked("c08-open-elsewhere")
            assertTrue("it can be tried again", hand.there(Does.Today))
        }
    }

    @Test
    fun `a key that is gone`() {
        begun()
        app.keeper.forget()
        val hand = later()
        saysNothingOfTheInside(hand.on)
        hand.on.looked("c09-key-gone")
        assertTrue("the twelve words may open it", hand.there(Does.OpenByPhrase))
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
