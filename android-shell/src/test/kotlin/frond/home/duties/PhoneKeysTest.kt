package frond.home.duties

import frond.core.KeeperTrouble
import frond.home.duties.keys.BoxFailure
import frond.home.duties.keys.BoxTrouble
import frond.home.duties.keys.Keys
import frond.home.duties.keys.Marks
import frond.home.duties.keys.PhoneKeys
import frond.home.looked.FrondRunner
import org.junit.Assert.assertArrayEquals
import org.junit.Assert.assertEquals
import org.junit.Assert.assertFalse
import org.junit.Assert.assertNull
import org.junit.Assert.assertTrue
import org.junit.Assert.fail
import org.junit.Test
import org.junit.runner.RunWith
import org.robolectric.RuntimeEnvironment

/** The key keeper as the core sees it: a key goes round, and each failure is told as what it is. */
@RunWith(FrondRunner::class)
class PhoneKeysTest {
    private val box = SoftwareBox()
    private val phone = PhoneKeys(Keys(box), Marks(RuntimeEnvironment.getApplication()))
    private val diary = ByteArray(16) { 3 }

    private fun trouble(what: () -> Unit): KeeperTrouble {
        try {
            what()
        } catch (trouble: KeeperTrouble) {
            return trouble
        }
        fail("it should have failed")
        throw AssertionError()
    }

    @Test
    fun `a key goes round, and what passed through is overwritten`() {
        val key = ByteArray(32) { 9 }
        val wrap = phone.wrap(key)
        assertArrayEquals("overwritten", ByteArray(32), key)
        assertArrayEquals(ByteArray(32) { 9 }, phone.unwrap(wrap))
    }

    @Test
    fun `each failure is told as what it is`() {
        val wrap = phone.wrap(ByteArray(32))
        assertTrue(trouble { phone.unwrap(wrap.copyOf(wrap.size - 1)) } is KeeperTrouble.Failed)
        box.keys.clear()
        assertTrue(trouble { phone.unwrap(wrap) } is KeeperTrouble.KeyGone)
        box.fails = { throw BoxTrouble(BoxFailure.REFUSED) }
        assertTrue(trouble { phone.unwrap(wrap) } is KeeperTrouble.Refused)
        assertTrue(trouble { phone.wrap(ByteArray(32)) } is KeeperTrouble.Refused)
    }

    @Test
    fun `nothing of what a key store throws goes on`() {
        val wrap = phone.wrap(ByteArray(32))
        for (thrown in listOf(IllegalStateException("secret"), java.security.ProviderException("secret"), StackOverflowError("secret"))) {
            box.fails = { throw thrown }
            for (call in listOf<() -> Unit>(
                { phone.wrap(ByteArray(32)) }, { phone.unwrap(wrap) }, { phone.keepOnly(wrap) }, { phone.forget() },
            )) {
                val told = trouble(call)
                assertTrue(told is KeeperTrouble.Failed)
                assertFalse(told.toString().contains("secret"))
                assertNull(told.cause)
            }
        }
    }

    @Test
    fun `marks go through, and what is no diary is a failure`() {
        phone.keepMark(diary, byteArrayOf(5))
        assertArrayEquals(byteArrayOf(5), phone.keptMark(diary))
        phone.forgetMark(diary)
        assertNull(phone.keptMark(diary))
        assertTrue(trouble { phone.keptMark(ByteArray(3)) } is KeeperTrouble.Failed)
    }

    @Test
    fun `keeping one and forgetting all reach the box`() {
        phone.wrap(ByteArray(32))
        val wrap = phone.wrap(ByteArray(32))
        phone.keepOnly(wrap)
        assertEquals(1, box.keys.size)
        phone.forget()
        assertEquals(0, box.keys.size)
    }
}
