package frond.home.duties

import android.Manifest
import android.app.Activity
import android.app.AlarmManager
import android.app.AlertDialog
import android.content.ClipData
import android.content.ClipboardManager
import android.content.Intent
import android.net.Uri
import android.os.Looper
import android.provider.Settings
import android.view.View
import android.view.ViewGroup
import android.view.WindowManager.LayoutParams.FLAG_KEEP_SCREEN_ON
import android.view.WindowManager.LayoutParams.FLAG_SECURE
import android.widget.TextView
import frond.core.Duty
import frond.core.FormWords
import frond.core.Limits
import frond.core.PlanReminders
import frond.core.PlannedReminder
import frond.core.SharedFile
import frond.home.duties.files.Documents
import frond.home.duties.files.Opening
import frond.home.duties.files.Read
import frond.home.duties.files.Waiting
import frond.home.looked.FrondRunner
import frond.home.looked.TestApp
import frond.home.screens.Notices
import org.junit.Assert.assertEquals
import org.junit.Assert.assertFalse
import org.junit.Assert.assertNull
import org.junit.Assert.assertTrue
import org.junit.Test
import org.junit.runner.RunWith
import org.robolectric.Robolectric
import org.robolectric.RuntimeEnvironment
import org.robolectric.Shadows.shadowOf
import org.robolectric.shadows.ShadowDialog
import java.io.ByteArrayInputStream
import java.io.ByteArrayOutputStream
import java.util.concurrent.Executor

/** What a duty of the core becomes on the phone, and what is asked before it. */
@RunWith(FrondRunner::class)
class PhoneDutiesTest {
    private val app = RuntimeEnvironment.getApplication() as TestApp
    private val activity: Activity = Robolectric.buildActivity(Activity::class.java).setup().get()
    private val words = ownNames(FormWords::class.java) as FormWords
    private val said = mutableListOf<String>()
    private val waiting = Waiting()
    private val limits = Limits(linkBytes = 100, planFileBytes = 1000, copyBytes = 5000)
    private val place: Uri = Uri.parse("content://elsewhere/1")

    private fun duties(of: Activity = activity) = PhoneDuties(of, waiting, Executor { it.run() }, { limits }, { words }) { said += it ?: "nothing more" }

    private val phone = duties()

    /** Words whose text is their own name, so that a test sees which were used. */
    private fun ownNames(type: Class<*>): Any {
        val fields = type.declaredFields.filterNot { java.lang.reflect.Modifier.isStatic(it.modifiers) }
        val values = fields.map { field ->
            when (field.type) {
                String::class.java -> field.name
                Boolean::class.java -> false
                List::class.java -> List(11) { "$it of 10" }
                else -> ownNames(field.type)
            }
        }
        return type.constructors.first { it.parameterCount == fields.size }.newInstance(*values.toTypedArray())
    }

    private fun idle() = shadowOf(Looper.getMainLooper()).idle()

    private fun file(sealed: Boolean) = Duty.ShareFile(SharedFile("copy.age", "application/octet-stream", byteArrayOf(7), sealed))

    private fun dialog(): AlertDialog = (ShadowDialog.getLatestDialog() as AlertDialog).also {
        idle()
        assertTrue("covered", it.window!!.attributes.flags and FLAG_SECURE != 0)
    }

    private fun press(which: Int) {
        dialog().getButton(which).performClick()
        idle()
    }

    private fun texts(view: View): List<TextView> = when (view) {
        is TextView -> listOf(view)
        is ViewGroup -> (0 until view.childCount).flatMap { texts(view.getChildAt(it)) }
        else -> emptyList()
    }

    private fun started(): Intent? = shadowOf(activity).nextStartedActivityForResult?.intent

    // Files.

    @Test
    fun `a sealed file may be shared or saved, and what it means is said first`() {
        phone.carryOut(file(sealed = true))
        val says = texts(dialog().window!!.decorView).map { it.text.toString() }
        assertTrue(says.any { it.contains("sealed") && it.contains("nobodyTold") })
        assertNull("nothing leaves before she chose", started())
        press(AlertDialog.BUTTON_NEUTRAL)
        assertEquals(Intent.ACTION_CHOOSER, started()!!.action)
        phone.carryOut(file(sealed = true))
        press(AlertDialog.BUTTON_POSITIVE)
        assertEquals(Intent.ACTION_CREATE_DOCUMENT, started()!!.action)
    }

    @Test
    fun `a plain file can only be saved, and that anyone can read it is said first`() {
        phone.carryOut(file(sealed = false))
        val says = texts(dialog().window!!.decorView).map { it.text.toString() }
        assertTrue(says.any { it.contains("unsealed") })
        assertFalse("no other app is offered", texts(dialog().window!!.decorView).any { it.isShown && it.text.toString() == "share" })
        press(AlertDialog.BUTTON_POSITIVE)
        val asks = started()!!
        assertEquals(Intent.ACTION_CREATE_DOCUMENT, asks.action)
        val out = ByteArrayOutputStream()
        shadowOf(app.contentResolver).registerOutputStream(place, out)
        assertTrue(phone.answered(Documents.SAVE, Activity.RESULT_OK, Intent().setData(place)))
        idle()
        assertEquals(1, out.size())
        assertEquals(listOf("saving", "saved"), said)
    }

    @Test
    fun `not now leaves nothing waiting, and is said`() {
        phone.carryOut(file(sealed = true))
        press(AlertDialog.BUTTON_NEGATIVE)
        assertEquals(listOf("notSaved"), said)
        assertNull(waiting.leaving)
    }

    @Test
    fun `a question that stood while the phone was turned is asked again`() {
        phone.carryOut(file(sealed = true))
        val before = dialog()
        phone.end()
        assertFalse(before.isShowing)
        val next = Robolectric.buildActivity(Activity::class.java).setup().get()
        duties(next).goOn()
        assertTrue(dialog().isShowing)
        assertFalse(dialog() === before)
        press(AlertDialog.BUTTON_NEGATIVE)
        assertNull(waiting.leaving)
    }

    @Test
    fun `a chosen file goes to who asked, up to what the core takes`() {
        val got = mutableListOf<String>()
        fun choose(opening: Opening, size: Int) {
            phone.chooseFile(opening) { got += it?.let { read -> read::class.simpleName } ?: "nothing" }
            shadowOf(app.contentResolver).registerInputStream(place, ByteArrayInputStream(ByteArray(size)))
            phone.answered(Documents.OPEN, Activity.RESULT_OK, Intent().setData(place))
            idle()
        }
        choose(Opening.PLAN, 1000)
        choose(Opening.PLAN, 1001)
        choose(Opening.COPY, 5000)
        choose(Opening.COPY, 5001)
        phone.chooseFile(Opening.PLAN) { got += it?.toString() ?: "nothing" }
        phone.answered(Documents.OPEN, Activity.RESULT_CANCELED, null)
        idle()
        assertEquals(listOf("Bytes", "TooLarge", "Bytes", "TooLarge", "nothing"), got)
        assertNull(waiting.chosen)
    }

    @Test
    fun `a phone without an app for files says so`() {
        shadowOf(app).checkActivities(true)
        var got: Read? = Read.TooLarge
        phone.chooseFile(Opening.PLAN) { got = it }
        assertEquals(listOf("noFiles"), said)
        assertNull("nobody waits any more", waiting.chosen)
        assertEquals(Read.TooLarge, got)
    }

    // What other programs hand over.

    private fun comes(intent: Intent): List<String> {
        val got = mutableListOf<String>()
        phone.incoming(intent, { got += it }, { got += "${it.size} bytes" })
        idle()
        return got
    }

    @Test
    fun `a link and a file of another program come once`() {
        val link = Intent(Intent.ACTION_VIEW, Uri.parse("FROND:AEBAGBA"))
        activity.intent = link
        assertEquals(listOf("FROND:AEBAGBA"), comes(link))
        assertEquals(emptyList<String>(), comes(activity.intent))
        shadowOf(app.contentResolver).registerInputStream(place, ByteArrayInputStream(ByteArray(10)))
        assertEquals(listOf("10 bytes"), comes(Intent(Intent.ACTION_VIEW, place)))
        shadowOf(app.contentResolver).registerInputStream(place, ByteArrayInputStream(ByteArray(2000)))
        assertEquals(emptyList<String>(), comes(Intent(Intent.ACTION_VIEW, place)))
        assertEquals("tooLarge", said.last())
        assertEquals(emptyList<String>(), comes(Intent(Intent.ACTION_MAIN)))
    }

    // The clipboard.

    @Test
    fun `a pasted link is taken off the clipboard, and that is said`() {
        val board = app.getSystemService(ClipboardManager::class.java)
        board.setPrimaryClip(ClipData.newPlainText("", "FROND:AEBAGBA"))
        assertEquals("FROND:AEBAGBA", phone.paste())
        assertEquals(listOf("clipboardCleared"), said)
        assertNull(phone.paste())
        board.setPrimaryClip(ClipData.newPlainText("", "A".repeat(101)))
        assertNull(phone.paste())
        assertEquals("tooLarge", said.last())
    }

    // Reminders, and whether they may be shown.

    private fun planned(count: Int) = Duty.PlanReminders(
        PlanReminders(
            List(count) {
                val at = app.clock.millis() + (it + 1) * 3_600_000L
                PlannedReminder(frond.core.Instant(at, 7200, null), frond.core.Instant(at + 3_600_000, 7200, null))
            },
            "A moment for you", 15,
        ),
    )

    @Test
    fun `the core's plan becomes an alarm, and an empty one takes it away`() {
        val alarms = shadowOf(app.getSystemService(AlarmManager::class.java))
        phone.carryOut(planned(3))
        assertEquals(1, alarms.scheduledAlarms.size)
        phone.carryOut(planned(0))
        assertEquals(0, alarms.scheduledAlarms.size)
    }

    @Test
    fun `the phone asks about notices when she lets it, and a refusal is respected`() {
        shadowOf(app).denyPermissions(Manifest.permission.POST_NOTIFICATIONS)
        assertEquals(Notices.ASK, phone.notices)
        var answered = 0
        phone.askNotices { answered++ }
        val asked = shadowOf(activity).lastRequestedPermission
        assertEquals(listOf(Manifest.permission.POST_NOTIFICATIONS), asked.requestedPermissions.toList())
        phone.allowed(asked.requestCode)
        phone.allowed(asked.requestCode)
        assertEquals("told once", 1, answered)
        assertEquals("asked once, refused: only the phone's settings are left", Notices.REFUSED, phone.notices)
        shadowOf(activity).clearNextStartedActivities()
        phone.openNoticeSettings()
        assertEquals(Settings.ACTION_APP_NOTIFICATION_SETTINGS, shadowOf(activity).nextStartedActivity.action)
        shadowOf(app).grantPermissions(Manifest.permission.POST_NOTIFICATIONS)
        assertEquals(Notices.ALLOWED, phone.notices)
        phone.askNotices { answered++ }
        assertEquals("nothing to ask", 2, answered)
    }

    // Calling, and the screen.

    @Test
    fun `without a dialler the number is shown large and said digit by digit`() {
        phone.carryOut(Duty.OpenDialler("112"))
        assertEquals(Intent.ACTION_DIAL, shadowOf(activity).nextStartedActivity.action)
        shadowOf(app).checkActivities(true)
        phone.carryOut(Duty.OpenDialler("+34 112"))
        val number = texts(dialog().window!!.decorView).single { it.text.toString() == "+34 112" }
        assertEquals("+ 3 4 1 1 2", number.contentDescription)
        val large = app.resources.getDimension(frond.home.R.dimen.text_large)
        assertEquals(large, number.textSize, 0.1f)
        assertTrue(texts(dialog().window!!.decorView).any { it.text.toString() == "noCalls" })
    }

    @Test
    fun `the screen is kept on`() {
        phone.carryOut(Duty.KeepScreenOn)
        assertTrue(activity.window.attributes.flags and FLAG_KEEP_SCREEN_ON != 0)
    }
}
