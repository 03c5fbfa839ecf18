package frond.home.duties

import frond.home.duties.keys.BoxFailure
import frond.home.duties.keys.BoxTrouble
import frond.home.duties.keys.Keys
import frond.home.looked.FrondRunner
import org.junit.Assert.assertArrayEquals
import org.junit.Assert.assertEquals
import org.junit.Assert.assertNotEquals
import org.junit.Assert.assertNull
import org.junit.Assert.assertTrue
import org.junit.Assert.fail
import org.junit.Test
import org.junit.runner.RunWith

/** The box around the phone's key store: what opens, which keys are destroyed, and that an altered wrap is noticed. */
@RunWith(FrondRunner::class)
class KeysTest {
    private val box = SoftwareBox()
    private val keys = Keys(box)
    private val secret = ByteArray(32) { it.toByte() }

    private fun failure(what: () -> Unit): BoxFailure {
        try {
            what()
        } catch (trouble: BoxTrouble) {
            assertNull("no text goes on", trouble.message)
            assertNull("no cause goes on", trouble.cause)
            assertEquals("no stack goes on", 0, trouble.stackTrace.size)
            return trouble.failure
        }
        fail("it should have failed")
        throw AssertionError()
    }

    @Test
    fun `a wrap opens with the key it names and is short enough for the core`() {
        val wrap = keys.wrap(secret)
        assertArrayEquals(secret, keys.unwrap(wrap))
        // The core's `WRAP_MOST`, less the byte that a code adds.
        assertTrue(wrap.size < 1023)
        assertTrue("the name stands in the wrap", String(wrap, Charsets.ISO_8859_1).contains(box.keys.keys.single()))
        assertTrue("the secret does not", !String(wrap, Charsets.ISO_8859_1).contains(String(secret, Charsets.ISO_8859_1)))
    }

    @Test
    fun `new keys have a new name and keep only destroys the older ones`() {
        val before = keys.wrap(secret)
        val after = keys.wrap(secret)
        assertEquals(2, box.keys.size)
        assertNotEquals(box.keys.keys.first(), box.keys.keys.last())
        // Until it is said which is kept, both open: a power cut in between loses nothing.
        assertArrayEquals(secret, keys.unwrap(before))
        keys.keepOnly(after)
        assertEquals(1, box.keys.size)
        assertEquals(BoxFailure.GONE, failure { keys.unwrap(before) })
        assertArrayEquals(secret, keys.unwrap(after))
        // Asked again, as after a restart in the middle of it.
        keys.keepOnly(after)
        assertArrayEquals(secret, keys.unwrap(after))
    }

    @Test
    fun `keep only destroys nothing where its own key is not there`() {
        val gone = keys.wrap(secret)
        box.keys.clear()
        val other = keys.wrap(secret)
        assertEquals(BoxFailure.GONE, failure { keys.keepOnly(gone) })
        assertEquals(BoxFailure.GARBLED, failure { keys.keepOnly(ByteArray(50)) })
        assertArrayEquals(secret, keys.unwrap(other))
    }

    @Test
    fun `forget destroys every key of ours and no other`() {
        val wraps = List(3) { keys.wrap(secret) }
        box.make("somebody else's")
        keys.forget()
        assertEquals(setOf("somebody else's"), box.keys.keys)
        for (wrap in wraps) assertEquals(BoxFailure.GONE, failure { keys.unwrap(wrap) })
        keys.forget()
    }

    @Test
    fun `every altered byte and every cut of a wrap is noticed`() {
        val wrap = keys.wrap(secret)
        for (at in wrap.indices) {
            val altered = wrap.copyOf().also { it[at] = (it[at].toInt() xor 1).toByte() }
            assertTrue("byte $at", failure { keys.unwrap(altered) } != BoxFailure.REFUSED)
            failure { keys.unwrap(wrap.copyOf(at)) }
        }
    }

    @Test
    fun `one key that cannot be destroyed does not keep the others from it`() {
        repeat(3) { keys.wrap(secret) }
        val stubborn = box.keys.keys.first()
        val refusing = object : frond.home.duties.keys.SecretBox by box {
            override fun destroy(name: String) {
                if (name == stubborn) throw BoxTrouble(BoxFailure.REFUSED)
                box.destroy(name)
            }
        }
        assertEquals(BoxFailure.REFUSED, failure { Keys(refusing).forget() })
        assertEquals(setOf(stubborn), box.keys.keys)
    }
}
