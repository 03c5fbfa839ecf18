package frond.home

import org.junit.Assert.assertArrayEquals
import org.junit.Assert.assertEquals
import org.junit.Assert.assertFalse
import org.junit.Assert.assertTrue
import org.junit.Test
import org.junit.runner.RunWith
import frond.home.looked.FrondRunner
import frond.home.looked.Opened
import java.io.PrintWriter
import java.io.StringWriter

/** What a fault of the app tells. */
@RunWith(FrondRunner::class)
class FaultsTest {
    private fun written(fault: Throwable) = StringWriter().also { fault.printStackTrace(PrintWriter(it)) }.toString()

    @Test
    fun `a fault says which sort it is and where, and not a word more`() {
        val words = "it was sore"
        val fault = IllegalStateException(words, NumberFormatException("For input string: \"$words\""))
        fault.addSuppressed(Error(words))
        assertTrue("the phone's own way would tell it", words in written(fault))
        val bare = Faults.bare(fault)
        assertFalse(written(bare), words in written(bare))
        assertEquals("java.lang.IllegalStateException", bare.message)
        assertEquals("java.lang.NumberFormatException", bare.cause?.message)
        assertArrayEquals(fault.stackTrace, bare.stackTrace)
    }

    @Test
    fun `every thread of the app tells that alone`() {
        val before = Thread.getDefaultUncaughtExceptionHandler()
        var told: Throwable? = null
        try {
            Thread.setDefaultUncaughtExceptionHandler { _, fault -> told = fault }
            Opened().app.onCreate()
            // Twice is once.
            Faults.watch()
            Thread { error("it was sore") }.apply { start() }.join()
        } finally {
            Thread.setDefaultUncaughtExceptionHandler(before)
        }
        val said = written(checkNotNull(told) { "nobody was told" })
        assertTrue(said, "IllegalStateException" in said && "FaultsTest" in said)
        assertFalse(said, "sore" in said)
    }
}
