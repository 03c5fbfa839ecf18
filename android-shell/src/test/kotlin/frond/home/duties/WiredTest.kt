package frond.home.duties

import android.app.Activity
import android.app.NotificationManager
import android.content.Intent
import android.net.Uri
import android.os.Looper
import android.view.WindowManager.LayoutParams.FLAG_SECURE
import android.widget.TextView
import frond.core.Does
import frond.core.Frond
import frond.core.FrondException
import frond.core.KeyKeeper
import frond.core.LockAfter
import frond.core.Standing
import frond.core.View
import frond.core.WholeRequest
import frond.core.WholeScreen
import frond.home.MainActivity
import frond.home.door.Again
import frond.home.door.Answer
import frond.home.door.Door
import frond.home.door.ErasesLast
import frond.home.duties.files.SealedFile
import frond.home.duties.files.SharedFiles
import frond.home.duties.keys.BoxFailure
import frond.home.duties.keys.BoxTrouble
import frond.home.duties.keys.Keys
import frond.home.duties.keys.Marks
import frond.home.duties.keys.PhoneKeys
import frond.home.looked.FrondRunner
import frond.home.looked.Opened
import frond.home.looked.Person
import frond.home.looked.SoftKeeper
import frond.home.looked.TestApp
import frond.home.looked.all
import frond.home.looked.go
import frond.home.screens.SEND
import org.junit.Assert.assertEquals
import org.junit.Assert.assertFalse
import org.junit.Assert.assertNotEquals
import org.junit.Assert.assertNull
import org.junit.Assert.assertTrue
import org.junit.Test
import org.junit.runner.RunWith
import org.robolectric.Robolectric
import org.robolectric.RuntimeEnvironment
import org.robolectric.Shadows.shadowOf
import java.io.File
import java.util.concurrent.TimeUnit

/** The duties as the app has them, with the real core behind it. */
@RunWith(FrondRunner::class)
class WiredTest {
    private val app = RuntimeEnvironment.getApplication() as TestApp

    // Keys, over the border and back.

    private val box = SoftwareBox()
    private val folder = File(app.noBackupFilesDir, "another").path

    private fun core() = Frond(
        folder, "en", frond.core.Covered(true, true, true, true, true, true),
        PhoneKeys(Keys(box), Marks(File(app.noBackupFilesDir, "other-marks"))),
    )

    private fun moment() = frond.core.Moment(1_772_442_000_000, "Europe/Madrid", 60, 1u, 1000u)

    private fun Frond.shows(request: WholeRequest): View = whole(request, moment()).view

    @Test
    fun `every new key of the diary is a new key of the phone, and an erased diary leaves none`() {
        core().use { frond ->
            frond.shows(WholeRequest.StartNew)
            val first = box.keys.keys.toSet()
            assertEquals(1, first.size)
            frond.shows(WholeRequest.SetCode("2580", "2580"))
            val second = box.keys.keys.toSet()
            assertEquals("the older key is destroyed", 1, second.size)
            assertNotEquals(first, second)
            frond.shows(WholeRequest.RemoveCode("2580"))
            val third = box.keys.keys.toSet()
            assertEquals(1, third.size)
            assertNotEquals(second, third)
            frond.shows(WholeRequest.EraseAll)
            assertEquals(emptySet<String>(), box.keys.keys)
        }
    }

    @Test
    fun `a diary opens again with the phone's key, and without it says what to do`() {
        core().use { it.shows(WholeRequest.StartNew) }
        core().use { assertTrue(it.shows(WholeRequest.Begin) is View.Screen) }
        box.fails = { throw BoxTrouble(BoxFailure.REFUSED) }
        core().use { assertStands(it) }
        box.fails = null
        box.keys.clear()
        core().use { assertStands(it) }
    }

    @Test
    fun `a key store that throws anything is a screen, and its text is nowhere`() {
        core().use { it.shows(WholeRequest.StartNew) }
        box.fails = { throw java.security.ProviderException("android.secret.Stack at line 1") }
        core().use { assertStands(it) }
    }

    /** What stands in the way is a screen or worded trouble, never a text of the key store. */
    private fun assertStands(frond: Frond) {
        val says = try {
            val view = frond.shows(WholeRequest.Begin)
            assertTrue("$view", view is View.Whole && (view.v1 is WholeScreen.CannotOpen || view.v1 is WholeScreen.Sorry))
            view.toString()
        } catch (trouble: FrondException) {
            trouble.toString()
        }
        for (never in listOf("secret", "Exception", "android.")) assertFalse(says, says.contains(never))
    }

    // The window.

    @Test
    fun `the window is covered before it shows anything`() {
        with(Opened()) {
            assertTrue(activity.window.attributes.flags and FLAG_SECURE != 0)
            assertTrue(activity.window.decorView.filterTouchesWhenObscured)
        }
    }

    @Test
    fun `left at once, the next opening shows one neutral word and one button first`() {
        with(Opened()) {
            activity.ways.whole(WholeRequest.StartNew)
            settle()
            activity.findViewById<android.view.View>(frond.home.R.id.leave).performClick()
            assertTrue(activity.isFinishing)
            assertTrue(Intent.CATEGORY_HOME in shadowOf(activity).nextStartedActivity.categories)
            controller.pause().stop().destroy()
        }
        val again = Robolectric.buildActivity(MainActivity::class.java).setup()
        shadowOf(Looper.getMainLooper()).idle()
        val texts = texts(again.get().window.decorView)
        assertEquals(listOf("Closed", "Open"), texts.map { it.text.toString() })
        texts.last().performClick()
        idle()
        assertTrue(texts(again.get().window.decorView).size > 2)
    }

    private fun idle() = repeat(6) {
        app.behind.submit {}.get(60, TimeUnit.SECONDS)
        app.beside.submit {}.get(60, TimeUnit.SECONDS)
        shadowOf(Looper.getMainLooper()).idle()
    }

    private fun texts(view: android.view.View): List<TextView> = when (view) {
        is TextView -> listOf(view)
        is android.view.ViewGroup -> (0 until view.childCount).flatMap { texts(view.getChildAt(it)) }
        else -> emptyList()
    }.filter { it.isShown }

    @Test
    fun `with a code it locks after a while, and nothing stays in sight meanwhile`() {
        with(Opened()) {
            activity.ways.whole(WholeRequest.StartNew)
            settle()
            activity.ways.whole(WholeRequest.SetCode("2580", "2580"))
            settle()
            assertTrue(app.door.coded)
            activity.ways.press(Does.Today)
            settle()
            controller.pause().stop()
            shadowOf(Looper.getMainLooper()).idleFor(AFTER, TimeUnit.MILLISECONDS)
            controller.restart().start().resume()
            settle()
            assertEquals("Your code", title)
            // Every way in asks for it.
            activity.ways.press(Does.Today)
            settle()
            assertEquals("Your code", title)
        }
    }

    @Test
    fun `it locks after the time that was chosen, and not at once while a file is chosen`() {
        with(Opened()) {
            val she = Person(this)
            she.press(Does.StartNew)
            activity.ways.whole(WholeRequest.SetCode("2580", "2580"))
            settle()
            go(Does.Settings)
            she.choose("lock", LockAfter.AT_ONCE)
            she.press("keep:lock")
            assertEquals(listOf<Any?>(LockAfter.AT_ONCE), she.chosen("lock"))
            go(Does.AcceptProgramme)
            all(activity.window.decorView).filterIsInstance<android.widget.Button>().first { it.text.toString() == words.fields.chooseFile }.performClick()
            settle()
            controller.pause().stop()
            settle()
            assertTrue("the picker is Frond's own", app.door.lockAfterMillis == 0L)
            shadowOf(activity).receiveResult(checkNotNull(shadowOf(activity).nextStartedActivityForResult).intent, Activity.RESULT_CANCELED, null)
            controller.restart().start().resume()
            settle()
            assertNotEquals("Your code", title)
            controller.pause().stop()
            settle()
            controller.restart().start().resume()
            settle()
            assertEquals("Your code", title)
        }
    }

    @Test
    fun `the screen that asks for the code speaks the language that was chosen, in the next process too`() {
        with(Opened()) {
            activity.ways.whole(WholeRequest.StartNew)
            settle()
            go(Does.Settings)
            val she = Person(this)
            she.choose("language", "es")
            she.press(SEND)
            activity.ways.whole(WholeRequest.SetCode("2580", "2580"))
            settle()
        }
        app.newProcess()
        with(Opened()) {
            assertEquals("Tu código", title)
            activity.ways.whole(WholeRequest.GiveCode("2580"))
            settle()
            activity.ways.whole(WholeRequest.EraseAll)
            settle()
        }
        app.newProcess()
        // With the diary its language goes as well.
        assertEquals("Nothing is here yet", Opened().title)
    }

    @Test
    fun `what was to be remembered is taken back before anything is erased, and is there again where nothing was`() {
        val asked = mutableListOf<String>()
        var open = true
        val core = object : Door by app.door {
            override fun press(does: Does, answered: (Answer) -> Unit) = app.behind.execute {
                asked += "erased"
                val standing = Standing(open, coded = false, lockAfterSeconds = null, language = null)
                app.door.whole(WholeRequest.Begin) { answered(Answer.Trouble("", Again.STAY, it.words, standing)) }
            }
        }
        val door = ErasesLast(core, app.behind) {
            asked += "taken back"
            val back = { asked += "put back"; Unit }
            back
        }
        with(Opened()) {
            door.press(Does.EraseAllNow) {}
            settle()
            assertEquals(listOf("taken back", "erased", "put back"), asked)
            asked.clear()
            open = false
            door.press(Does.EraseAllNow) {}
            settle()
            assertEquals(listOf("taken back", "erased"), asked)
        }
    }

    @Test
    fun `without a code it does not lock`() {
        with(Opened()) {
            activity.ways.whole(WholeRequest.StartNew)
            settle()
            activity.ways.press(Does.Settings)
            settle()
            val before = title
            controller.pause().stop()
            shadowOf(Looper.getMainLooper()).idleFor(AFTER * 2, TimeUnit.MILLISECONDS)
            controller.restart().start().resume()
            settle()
            assertEquals(before, title)
        }
    }

    @Test
    fun `a link of another program is shown once the diary is open, and not again after the phone was turned`() {
        app.waiting.chosen = null
        val link = Intent(Intent.ACTION_VIEW, Uri.parse("FROND:AEBAGBA"), app, MainActivity::class.java)
        Opened().run {
            activity.ways.whole(WholeRequest.StartNew)
            settle()
            controller.pause().stop().destroy()
        }
        val opened = Robolectric.buildActivity(MainActivity::class.java, link).setup()
        idle()
        assertNull("taken", opened.get().intent.data)
        val texts = texts(opened.get().window.decorView).map { it.text.toString() }
        // The link is no plan: the form says so, and nothing of it is shown but in its own field.
        assertTrue(texts.toString(), opened.get().window.decorView.findViewById<android.view.View>(frond.home.R.id.title) != null)
        assertFalse(texts.toString(), texts.any { it == "Today" })
    }

    @Test
    fun `a shared file and a late alarm of the day before are dealt with at the next launch`() {
        SharedFiles.lay(app, SealedFile("copy.age", "application/octet-stream", byteArrayOf(1)))
        Opened()
        idle()
        assertEquals(0, File(app.cacheDir, "shared").walk().count { it.isFile })
        assertEquals(0, shadowOf(app.getSystemService(NotificationManager::class.java)).size())
    }

    @Test
    fun `an erased diary leaves no reminder behind`() {
        val alarms = shadowOf(app.getSystemService(android.app.AlarmManager::class.java))
        // The core sends an empty plan afterwards, which a phone that ends the app meanwhile never carries out.
        var waiting = -1
        val inside = SoftKeeper()
        app.keeper = object : KeyKeeper by inside {
            override fun forget() {
                waiting = alarms.scheduledAlarms.size
                inside.forget()
            }
        }
        with(Opened()) {
            activity.ways.whole(WholeRequest.StartNew)
            settle()
            val words = frond.home.duties.reminders.ReminderWords("A moment for you", "Reminders", "Later", "Done")
            val soon = java.time.LocalDateTime.now(app.clock).plusHours(1)
            val time = frond.home.duties.reminders.ReminderTime(soon, soon.plusHours(1))
            frond.home.duties.reminders.Reminders(app).replace(frond.home.duties.reminders.ReminderPlan(listOf(time), words, 15))
            assertEquals(1, alarms.scheduledAlarms.size)
            activity.ways.whole(WholeRequest.EraseAll)
            settle()
            idle()
            assertEquals("as the key is destroyed", 0, waiting)
            assertEquals(0, alarms.scheduledAlarms.size)
        }
    }

    private companion object {
        const val AFTER = 2 * 60 * 1000L
    }
}
