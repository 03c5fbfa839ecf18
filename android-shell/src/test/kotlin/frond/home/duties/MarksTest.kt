package frond.home.duties

import frond.home.duties.keys.Marks
import frond.home.looked.FrondRunner
import org.junit.Assert.assertArrayEquals
import org.junit.Assert.assertEquals
import org.junit.Assert.assertNull
import org.junit.Assert.assertThrows
import org.junit.Test
import org.junit.runner.RunWith
import org.robolectric.RuntimeEnvironment

/** The marks that are kept outside of the diary's folder: where they lie and which are refused. */
@RunWith(FrondRunner::class)
class MarksTest {
    private val context = RuntimeEnvironment.getApplication()
    private val one = ByteArray(16) { 1 }
    private val other = ByteArray(16) { 2 }

    @Test
    fun `a mark is kept for each diary, replaced, and forgotten`() {
        val marks = Marks(context)
        assertNull(marks.kept(one))
        marks.keep(one, byteArrayOf(1, 2, 3))
        marks.keep(other, byteArrayOf(9))
        marks.keep(one, byteArrayOf(4))
        // As after a restart.
        assertArrayEquals(byteArrayOf(4), Marks(context).kept(one))
        marks.forget(one)
        marks.forget(one)
        assertNull(marks.kept(one))
        assertArrayEquals(byteArrayOf(9), marks.kept(other))
    }

    @Test
    fun `marks lie outside of what the phone backs up and of the folder of files`() {
        Marks(context).keep(one, byteArrayOf(1))
        val file = context.noBackupFilesDir.walk().single { it.isFile }
        assertEquals("marks", file.parentFile?.name)
        assertEquals(emptyList<String>(), context.filesDir.walk().filter { it.isFile }.map { it.name }.toList())
    }

    @Test
    fun `what is no id and no mark is refused`() {
        val marks = Marks(context)
        assertThrows(IllegalArgumentException::class.java) { marks.kept("../../../etc/pass".toByteArray()) }
        assertThrows(IllegalArgumentException::class.java) { marks.keep(one, ByteArray(129)) }
    }
}
