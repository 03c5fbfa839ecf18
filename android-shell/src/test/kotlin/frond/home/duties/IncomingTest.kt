package frond.home.duties

import android.app.Activity
import android.content.ComponentName
import android.content.Context
import android.content.Intent
import android.net.Uri
import android.os.BadParcelableException
import frond.home.MainActivity
import frond.home.duties.files.Incoming
import frond.home.looked.FrondRunner
import org.junit.Assert.assertEquals
import org.junit.Assert.assertNull
import org.junit.Assert.assertTrue
import org.junit.Test
import org.junit.runner.RunWith
import org.robolectric.Robolectric
import org.robolectric.RuntimeEnvironment

/** What another program may bring, a link or a file, and what of it is let in. */
@RunWith(FrondRunner::class)
class IncomingTest {
    private val context: Context = RuntimeEnvironment.getApplication()
    private val most = 16 * 1024
    private val file = Uri.parse("content://elsewhere/plan")

    private fun of(intent: Intent?) = Incoming.of(intent, most)

    private fun view(uri: String) = Intent(Intent.ACTION_VIEW, Uri.parse(uri))

    private fun text(text: String) = Intent(Intent.ACTION_SEND).setType("text/plain").putExtra(Intent.EXTRA_TEXT, text)

    @Test
    fun `a link comes from a camera in capital letters, from a page in small ones, and from a text`() {
        assertEquals(Incoming.Link("FROND:AEBAGBA"), of(view("FROND:AEBAGBA")))
        assertEquals(Incoming.Link("frond:aebagba"), of(view("frond:aebagba")))
        assertEquals(Incoming.Link("FROND:AEBAGBA"), of(text("FROND:AEBAGBA")))
        assertEquals(Incoming.Link("FROND:AEBAGBA\n"), of(text("Here it is:\n FROND:AEBAGBA\n")))
    }

    @Test
    fun `a file comes opened or shared and is not read yet`() {
        assertEquals(Incoming.File(file), of(Intent(Intent.ACTION_VIEW, file)))
        assertEquals(Incoming.File(file), of(Intent(Intent.ACTION_SEND).putExtra(Intent.EXTRA_STREAM, file)))
    }

    @Test
    fun `everything else brings nothing`() {
        assertNull(of(null))
        assertNull(of(Intent(Intent.ACTION_MAIN)))
        assertNull(of(Intent(Intent.ACTION_VIEW)))
        assertNull(of(view(Uri.fromFile(context.filesDir).toString())))
        assertNull(of(view("https://example.org/FROND:AEBAGBA")))
        assertNull(of(text("good morning")))
        assertNull(of(Intent(Intent.ACTION_SEND)))
        assertNull(of(view("FROND:AEBAGBA").addFlags(Intent.FLAG_ACTIVITY_LAUNCHED_FROM_HISTORY)))
    }

    @Test
    fun `a text longer than any link is not looked into`() {
        assertEquals(Incoming.Link("FROND:" + "A".repeat(most - 6)), of(text("FROND:" + "A".repeat(most - 6))))
        assertEquals(Incoming.TooLarge, of(text("FROND:" + "A".repeat(most - 5))))
        assertEquals(Incoming.TooLarge, of(view("FROND:" + "A".repeat(most - 5))))
    }

    @Test
    fun `what another program packed and nobody can unpack brings nothing`() {
        val garbled = object : Intent(ACTION_SEND) {
            override fun <T : Any?> getParcelableExtra(name: String?, type: Class<T>): T? = throw BadParcelableException("secret")
        }
        assertNull(of(garbled))
    }

    @Test
    fun `once taken it does not come again`() {
        val activity = Robolectric.buildActivity(Activity::class.java, view("FROND:AEBAGBA")).setup().get()
        assertEquals(Incoming.Link("FROND:AEBAGBA"), of(activity.intent))
        Incoming.taken(activity)
        assertNull(of(activity.intent))
        assertNull(activity.intent.dataString)
    }

    /** The manifest's filters, as the system matches them: schemes by case, types by name. */
    @Test
    fun `the system finds Frond for what it takes and for nothing else`() {
        val main = ComponentName(context, MainActivity::class.java)
        fun found(intent: Intent) = context.packageManager.queryIntentActivities(intent.addCategory(Intent.CATEGORY_DEFAULT), 0)
            .any { ComponentName(it.activityInfo.packageName, it.activityInfo.name) == main }
        for (takes in listOf(
            view("FROND:AEBAGBA").addCategory(Intent.CATEGORY_BROWSABLE), view("frond:aebagba"),
            Intent(Intent.ACTION_VIEW).setDataAndType(file, "application/json"),
            Intent(Intent.ACTION_VIEW).setDataAndType(file, "application/octet-stream"),
            Intent(Intent.ACTION_SEND).setType("application/json"), text("FROND:AEBAGBA"),
        )) assertTrue(takes.toString(), found(takes))
        for (not in listOf(
            view("https://example.org"), view("tel:1"), Intent(Intent.ACTION_SEND).setType("image/png"),
            Intent(Intent.ACTION_VIEW).setDataAndType(file, "image/png"), Intent(Intent.ACTION_SEND_MULTIPLE).setType("text/plain"),
        )) assertTrue(not.toString(), !found(not))
    }
}
