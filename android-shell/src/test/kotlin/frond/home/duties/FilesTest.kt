package frond.home.duties

import android.app.Activity
import android.content.Context
import android.content.Intent
import android.content.pm.ProviderInfo
import android.net.Uri
import android.os.Looper
import android.os.ParcelFileDescriptor
import android.provider.OpenableColumns
import frond.home.duties.files.Documents
import frond.home.duties.files.DocumentsSeen
import frond.home.duties.files.LeavingFile
import frond.home.duties.files.OpenFile
import frond.home.duties.files.Opening
import frond.home.duties.files.Read
import frond.home.duties.files.Reading
import frond.home.duties.files.Saved
import frond.home.duties.files.SealedFile
import frond.home.duties.files.SharedFiles
import frond.home.duties.files.Waiting
import frond.home.looked.FrondRunner
import org.junit.Assert.assertArrayEquals
import org.junit.Assert.assertEquals
import org.junit.Assert.assertFalse
import org.junit.Assert.assertNotEquals
import org.junit.Assert.assertNull
import org.junit.Assert.assertThrows
import org.junit.Assert.assertTrue
import org.junit.Test
import org.junit.runner.RunWith
import org.robolectric.Robolectric
import org.robolectric.RuntimeEnvironment
import org.robolectric.Shadows.shadowOf
import java.io.ByteArrayInputStream
import java.io.ByteArrayOutputStream
import java.io.File
import java.io.FileNotFoundException
import java.io.IOException
import java.io.InputStream
import java.io.OutputStream
import java.util.concurrent.Executor
import java.util.concurrent.TimeUnit

/** What leaves and comes as a file: saved where she chooses, shared, opened; and what is said where that fails. */
@RunWith(FrondRunner::class)
class FilesTest : DocumentsSeen {
    private val context: Context = RuntimeEnvironment.getApplication()
    private val activity: Activity = Robolectric.buildActivity(Activity::class.java).setup().get()
    private val resolver = shadowOf(context.contentResolver)

    /** Work waits until the test lets it run, so that what happens on which thread can be told apart. */
    private val queue = ArrayDeque<Runnable>()
    private val seen = mutableListOf<String>()
    private val waiting = Waiting()
    private var read: Read? = null
    private val documents = documents(waiting)

    private fun documents(waiting: Waiting) = Documents(activity, waiting, Executor(queue::add), this) { 1000L }

    override fun handedOver() {
        seen += "handed over"
    }

    override fun working(saving: Boolean) {
        seen += if (saving) "saving" else "reading"
    }

    override fun saved(saved: Saved) {
        seen += saved.name
    }

    override fun read(opening: Opening, read: Read?) {
        seen += "$opening ${read?.let { it::class.simpleName }}"
        this.read = read
    }

    private fun work() {
        while (queue.isNotEmpty()) queue.removeFirst().run()
        shadowOf(Looper.getMainLooper()).idle()
    }

    private fun asked(): Intent = shadowOf(activity).nextStartedActivityForResult.intent

    private val sealed = SealedFile("copy.age", "application/octet-stream", byteArrayOf(1, 2, 3))
    private val open = OpenFile("calendar.ics", "text/calendar", "BEGIN:VCALENDAR".toByteArray())
    private val place: Uri = Uri.parse("content://elsewhere/document/1")

    private fun answer(request: Int, uri: Uri?) = documents.answered(
        request, if (uri == null) Activity.RESULT_CANCELED else Activity.RESULT_OK, uri?.let { Intent().setData(it) },
    )

    @Test
    fun `a file is saved where the person chooses, under the name the core gave`() {
        val out = ByteArrayOutputStream()
        resolver.registerOutputStream(place, out)
        documents.save(open)
        val asks = asked()
        assertEquals(Intent.ACTION_CREATE_DOCUMENT, asks.action)
        assertEquals("calendar.ics", asks.getStringExtra(Intent.EXTRA_TITLE))
        assertEquals("text/calendar", asks.type)
        assertTrue(answer(Documents.SAVE, place))
        assertEquals("nothing on the main thread", 0, out.size())
        work()
        assertArrayEquals(open.bytes, out.toByteArray())
        assertEquals(listOf("saving", "DONE"), seen)
    }

    @Test
    fun `no place chosen is said, and nothing waits any more`() {
        documents.save(sealed)
        answer(Documents.SAVE, null)
        work()
        assertEquals(listOf("NOTHING"), seen)
        assertNull(waiting.saving)
    }

    @Test
    fun `where the process was ended meanwhile nothing is saved, and that is said`() {
        documents.save(sealed)
        resolver.registerInputStream(place, ByteArrayInputStream(byteArrayOf()))
        documents(Waiting()).answered(Documents.SAVE, Activity.RESULT_OK, Intent().setData(place))
        work()
        assertEquals(listOf("NOTHING"), seen)
    }

    @Test
    fun `a place that cannot be written is said`() {
        resolver.registerOutputStream(place, object : OutputStream() {
            override fun write(byte: Int): Unit = throw IOException("full: /storage/secret")
        })
        documents.save(sealed)
        answer(Documents.SAVE, place)
        work()
        assertEquals(listOf("saving", "FAILED"), seen)
    }

    @Test
    fun `only a sealed file can be shared, by its type`() {
        val takes = Documents::class.java.methods.single { it.name == "share" }.parameterTypes.first()
        assertEquals(SealedFile::class.java, takes)
        assertTrue(LeavingFile::class.java.isAssignableFrom(takes))
        assertFalse(takes.isInstance(open))
        val lays = SharedFiles.Companion::class.java.methods.single { it.name == "lay" }.parameterTypes
        assertEquals(SealedFile::class.java, lays[1])
    }

    private fun shared(): Uri {
        documents.share(sealed, "Share")
        work()
        val chooser = asked()
        assertEquals(Intent.ACTION_CHOOSER, chooser.action)
        val sends = chooser.getParcelableExtra(Intent.EXTRA_INTENT, Intent::class.java)!!
        assertEquals(Intent.ACTION_SEND, sends.action)
        assertTrue(sends.flags and Intent.FLAG_GRANT_READ_URI_PERMISSION != 0)
        assertEquals(0, sends.flags and Intent.FLAG_GRANT_WRITE_URI_PERMISSION)
        assertNull("no words go along", sends.getStringExtra(Intent.EXTRA_TEXT))
        return sends.getParcelableExtra(Intent.EXTRA_STREAM, Uri::class.java)!!
    }

    private fun provider(): SharedFiles = Robolectric.buildContentProvider(SharedFiles::class.java)
        .create(ProviderInfo().apply { authority = "frond.home.shared"; grantUriPermissions = true }).get()

    @Test
    fun `a shared file can be read under its address and not written`() {
        val uri = shared()
        val provider = provider()
        val bytes = ParcelFileDescriptor.AutoCloseInputStream(provider.openFile(uri, "r")).use { it.readBytes() }
        assertArrayEquals(sealed.bytes, bytes)
        for (mode in listOf("w", "rw", "wt", "rwt")) {
            assertThrows(FileNotFoundException::class.java) { provider.openFile(uri, mode) }
        }
        assertEquals(0, provider.delete(uri, null, null))
        val row = provider.query(uri, null, null, null, null)!!
        assertTrue(row.moveToFirst())
        assertEquals("copy.age", row.getString(row.getColumnIndexOrThrow(OpenableColumns.DISPLAY_NAME)))
        assertEquals(3, row.getInt(row.getColumnIndexOrThrow(OpenableColumns.SIZE)))
    }

    @Test
    fun `the provider refuses whatever lies outside`() {
        val uri = shared()
        File(context.filesDir, "diary").writeText("sealed")
        val id = uri.pathSegments[0]
        val base = "content://frond.home.shared"
        val provider = provider()
        for (other in listOf(
            "$base/$id/..%2F..%2F..%2Ffiles%2Fdiary", "$base/$id/../../../files/diary", "$base/..%2F..%2Ffiles/diary",
            "$base/$id/%2E%2E", "$base/$id", "$base/", "$base/$id/", "$base/$id/copy.age/more", "$base/${"0".repeat(32)}/copy.age",
            "content://elsewhere/$id/copy.age", Uri.fromFile(File(context.filesDir, "diary")).toString(),
        )) {
            assertThrows(other, FileNotFoundException::class.java) { provider.openFile(Uri.parse(other), "r") }
            assertNull(other, provider.query(Uri.parse(other), null, null, null, null))
        }
    }

    @Test
    fun `an address cannot be guessed, and a strange name is not used`() {
        assertNotEquals(shared().pathSegments[0], shared().pathSegments[0])
        val strange = SharedFiles.lay(context, SealedFile("../../files/x", "application/octet-stream", byteArrayOf(1)))
        assertEquals("file", strange.lastPathSegment)
    }

    private fun lying() = File(context.cacheDir, "shared").walk().count { it.isFile }

    @Test
    fun `shared files are wiped a while after coming back and at the next launch`() {
        shared()
        assertEquals(1, lying())
        answer(Documents.SHARE, null)
        work()
        assertEquals("a mail program may still read it", 1, lying())
        shadowOf(Looper.getMainLooper()).idleFor(Documents.SHARED_MILLIS, TimeUnit.MILLISECONDS)
        work()
        assertEquals(0, lying())
        shared()
        SharedFiles.wipe(context)
        assertEquals(0, lying())
        SharedFiles.wipe(context)
    }

    @Test
    fun `a chosen file is read off the main thread`() {
        resolver.registerInputStream(place, ByteArrayInputStream("a plan".toByteArray()))
        documents.open(Opening.PLAN)
        assertEquals(Intent.ACTION_OPEN_DOCUMENT, asked().action)
        answer(Documents.OPEN, place)
        assertEquals(listOf("reading"), seen)
        work()
        assertEquals(listOf("reading", "PLAN Bytes"), seen)
        assertArrayEquals("a plan".toByteArray(), (read as Read.Bytes).bytes)
        documents.open(Opening.COPY)
        answer(Documents.OPEN, null)
        assertEquals("COPY null", seen.last())
    }

    @Test
    fun `not one byte more than the core takes is read, whatever length is told`() {
        for ((size, kind) in listOf(999 to "Bytes", 1000 to "Bytes", 1001 to "TooLarge", 100_000 to "TooLarge")) {
            resolver.registerInputStream(place, ByteArrayInputStream(ByteArray(size)))
            assertEquals("$size", kind, Reading.read(context, place, 1000)::class.simpleName)
        }
        var given = 0L
        resolver.registerInputStream(place, object : InputStream() {
            override fun read(): Int = 0.also { given++ }
        })
        assertEquals(Read.TooLarge, Reading.read(context, place, 1000))
        assertTrue("an endless file is left at once", given <= 1001)
    }

    @Test
    fun `what another program throws is no more than unreadable`() {
        for (failure in listOf(IOException("secret"), SecurityException("secret"), IllegalStateException("secret"))) {
            resolver.registerInputStream(place, object : InputStream() {
                override fun read(): Int = throw failure
            })
            assertEquals(Read.Unreadable, Reading.read(context, place, 1000))
        }
        assertEquals(Read.Unreadable, Reading.read(context, Uri.parse("content://nobody/1"), 1000))
    }

    @Test
    fun `a path, or an address of our own, is not read for anybody`() {
        val own = SharedFiles.lay(context, sealed)
        val path = Uri.fromFile(File(context.filesDir, "diary").apply { writeText("x") })
        for (uri in listOf(own, path, Uri.parse("https://example.org/plan"))) {
            assertEquals(Read.Unreadable, Reading.read(context, uri, 1000))
        }
    }
}
