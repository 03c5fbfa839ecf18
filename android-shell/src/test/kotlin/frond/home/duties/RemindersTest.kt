package frond.home.duties

import android.Manifest
import android.app.AlarmManager
import android.app.Notification
import android.app.NotificationManager
import android.content.Intent
import frond.home.MainActivity
import frond.home.duties.reminders.Notices
import frond.home.duties.reminders.PlanAnewReceiver
import frond.home.duties.reminders.ReminderPlan
import frond.home.duties.reminders.ReminderReceiver
import frond.home.duties.reminders.ReminderTime
import frond.home.duties.reminders.ReminderWords
import frond.home.duties.reminders.Reminders
import frond.home.looked.FrondRunner
import frond.home.looked.TestApp
import org.junit.After
import org.junit.Assert.assertEquals
import org.junit.Assert.assertFalse
import org.junit.Assert.assertNotNull
import org.junit.Assert.assertNull
import org.junit.Assert.assertTrue
import org.junit.Before
import org.junit.Test
import org.junit.runner.RunWith
import org.robolectric.RuntimeEnvironment
import org.robolectric.Shadows.shadowOf
import org.robolectric.shadows.ShadowAlarmManager
import java.time.Clock
import java.time.Instant
import java.time.LocalDateTime
import java.time.ZoneOffset
import java.util.TimeZone

/** Reminders as alarms and notices: one waits at a time, and what is shown gives nothing away. */
@RunWith(FrondRunner::class)
class RemindersTest {
    private val context = RuntimeEnvironment.getApplication() as TestApp
    private val alarms = shadowOf(context.getSystemService(AlarmManager::class.java))
    private val notices = shadowOf(context.getSystemService(NotificationManager::class.java))
    private val zoneBefore = TimeZone.getDefault()

    /** The receivers that the manifest names read the app's clock, so plans are laid around it. */
    private val now = LocalDateTime.ofInstant(context.clock.instant(), ZoneOffset.UTC).withNano(0)

    @Before
    fun zone() {
        TimeZone.setDefault(TimeZone.getTimeZone("UTC"))
        shadowOf(RuntimeEnvironment.getApplication()).grantPermissions(Manifest.permission.POST_NOTIFICATIONS)
    }

    @After
    fun zoneAgain() = TimeZone.setDefault(zoneBefore)

    private val words = ReminderWords("A moment for you", "Times", "Later", "Done")

    private fun inMinutes(vararg minutes: Long) = minutes.map { ReminderTime(now.plusMinutes(it), now.plusHours(12)) }

    private fun plan(times: List<ReminderTime>) = ReminderPlan(times, words, 15)

    private fun set(): ShadowAlarmManager.ScheduledAlarm? = alarms.scheduledAlarms.let {
        assertTrue("one alarm at most", it.size <= 1)
        it.firstOrNull()
    }

    private fun millis(time: LocalDateTime) = time.toInstant(ZoneOffset.UTC).toEpochMilli()

    private fun shown(): Notification? = notices.allNotifications.also { assertTrue(it.size <= 1) }.firstOrNull()

    private fun tell(intent: Intent) {
        context.sendBroadcast(intent.setPackage(context.packageName))
        shadowOf(android.os.Looper.getMainLooper()).idle()
    }

    private fun comes() {
        set()!!.operation!!.send()
        shadowOf(android.os.Looper.getMainLooper()).idle()
    }

    @Test
    fun `the next reminder is one inexact alarm of ten minutes`() {
        Reminders(context).replace(plan(inMinutes(30, 90)))
        val alarm = set()!!
        assertEquals(AlarmManager.RTC_WAKEUP, alarm.type)
        assertEquals(millis(now.plusMinutes(30)), alarm.triggerAtMs)
        assertEquals(10 * 60 * 1000L, alarm.windowLengthMs)
        assertFalse("not while the phone sleeps", alarm.isAllowWhileIdle)
    }

    @Test
    fun `a plan replaces the one before as a whole, and an empty one leaves nothing`() {
        Reminders(context).replace(plan(inMinutes(30)))
        Reminders(context).replace(plan(inMinutes(200)))
        assertEquals(millis(now.plusMinutes(200)), set()!!.triggerAtMs)
        Reminders(context).replace(plan(emptyList()))
        assertNull(set())
        assertEquals(emptyList<String>(), context.noBackupFilesDir.walk().filter { it.isFile }.map { it.name }.toList())
        tell(Intent(Intent.ACTION_BOOT_COMPLETED))
        assertNull(set())
    }

    @Test
    fun `an alarm that comes shows the neutral words, hidden on a locked screen and kept from a watch`() {
        Reminders(context).replace(plan(inMinutes(-1, 60)))
        Reminders(context).came()
        val notice = shown()!!
        assertEquals("A moment for you", notice.extras.getString(Notification.EXTRA_TITLE))
        assertNull(notice.extras.getCharSequence(Notification.EXTRA_TEXT))
        assertEquals(Notification.VISIBILITY_SECRET, notice.visibility)
        assertNull("nothing stands in its place on a locked screen", notice.publicVersion)
        assertTrue("not passed on to a watch", notice.flags and Notification.FLAG_LOCAL_ONLY != 0)
        assertTrue("it goes when its time is over", notice.timeoutAfter in 1..12 * 3600 * 1000L)
        assertEquals(listOf("Later", "Done"), notice.actions.map { it.title.toString() })
        // The next one is set in its place.
        assertEquals(millis(now.plusMinutes(60)), set()!!.triggerAtMs)
    }

    @Test
    fun `its channel is neutral, secret, without light, buzz, badge or bubble`() {
        Reminders(context).replace(plan(inMinutes(-1)))
        Reminders(context).came()
        val channel = context.getSystemService(NotificationManager::class.java).notificationChannels.single()
        assertEquals("Times", channel.name)
        assertEquals(Notification.VISIBILITY_SECRET, channel.lockscreenVisibility)
        assertFalse(channel.shouldShowLights())
        assertFalse(channel.shouldVibrate())
        assertFalse(channel.canShowBadge())
        assertFalse(channel.canBubble())
        assertNull(channel.description)
    }

    @Test
    fun `the alarm itself reaches the receiver that the manifest names`() {
        Reminders(context).replace(plan(listOf(ReminderTime(now.plusSeconds(1), now.plusHours(12)))))
        shadowOf(android.os.Looper.getMainLooper()).idleFor(java.time.Duration.ofMillis(1500))
        comes()
        assertNotNull(shown())
    }

    @Test
    fun `what comes after quiet hours began or on the next day is not shown`() {
        val over = ReminderTime(now.minusHours(2), now.minusMinutes(1))
        Reminders(context).replace(plan(listOf(over) + inMinutes(60)))
        Reminders(context).came()
        assertNull(shown())
        assertEquals(millis(now.plusMinutes(60)), set()!!.triggerAtMs)
    }

    @Test
    fun `putting off takes the notice away and sets the alarm anew`() {
        Reminders(context).replace(plan(inMinutes(-1, 60)))
        Reminders(context).came()
        shown()!!.actions[0].actionIntent.send()
        shadowOf(android.os.Looper.getMainLooper()).idle()
        assertNull(shown())
        val again = set()!!.triggerAtMs
        assertTrue("in 15 minutes", again in millis(now.plusMinutes(15))..millis(now.plusMinutes(16)))
        // It is still there after a restart, and comes.
        tell(Intent(Intent.ACTION_BOOT_COMPLETED))
        assertEquals(again, set()!!.triggerAtMs)
        val later = Clock.fixed(Instant.ofEpochMilli(again + 1000), ZoneOffset.UTC)
        Reminders(context, later).came()
        assertNotNull(shown())
        assertEquals(millis(now.plusMinutes(60)), set()!!.triggerAtMs)
    }

    @Test
    fun `putting off is not offered where it would come too late`() {
        Reminders(context).replace(plan(listOf(ReminderTime(now.minusMinutes(1), now.plusMinutes(10)))))
        Reminders(context).came()
        assertEquals(listOf("Done"), shown()!!.actions.map { it.title.toString() })
        // Pressed late, on a notice shown in time: it goes, and nothing comes.
        Reminders(context).putOff()
        assertNull(shown())
        assertNull(set())
    }

    @Test
    fun `done takes the notice away and changes nothing else`() {
        Reminders(context).replace(plan(inMinutes(-1, 60)))
        Reminders(context).came()
        shown()!!.actions[1].actionIntent.send()
        shadowOf(android.os.Looper.getMainLooper()).idle()
        assertNull(shown())
        assertEquals(millis(now.plusMinutes(60)), set()!!.triggerAtMs)
    }

    @Test
    fun `a tap opens the app as its icon does and carries nothing`() {
        Reminders(context).replace(plan(inMinutes(-1)))
        Reminders(context).came()
        shown()!!.contentIntent.send()
        val opened = shadowOf(RuntimeEnvironment.getApplication()).nextStartedActivity
        assertEquals(MainActivity::class.java.name, opened.component?.className)
        assertNull(opened.extras)
        assertNull(opened.data)
        for (pending in listOf(shown()!!.contentIntent) + shown()!!.actions.map { it.actionIntent }) {
            assertTrue("nobody can put anything into it", pending.isImmutable)
        }
    }

    @Test
    fun `after a restart, a new time or zone, and an update the alarm is set anew without the diary`() {
        for (action in listOf(
            Intent.ACTION_BOOT_COMPLETED, Intent.ACTION_TIME_CHANGED, Intent.ACTION_TIMEZONE_CHANGED,
            Intent.ACTION_MY_PACKAGE_REPLACED,
        )) {
            Reminders(context).replace(plan(inMinutes(30)))
            context.getSystemService(AlarmManager::class.java).cancel(ReminderReceiver.pending(context, ReminderReceiver.CAME))
            assertNull(set())
            tell(Intent(action))
            assertEquals(action, millis(now.plusMinutes(30)), set()!!.triggerAtMs)
        }
        context.getSystemService(AlarmManager::class.java).cancel(ReminderReceiver.pending(context, ReminderReceiver.CAME))
        PlanAnewReceiver().onReceive(context, Intent("something.else"))
        assertNull(set())
    }

    @Test
    fun `a reminder stays at its local time when the zone changes`() {
        Reminders(context).replace(plan(inMinutes(90)))
        TimeZone.setDefault(TimeZone.getTimeZone("GMT+01:00"))
        tell(Intent(Intent.ACTION_TIMEZONE_CHANGED))
        assertEquals(millis(now.plusMinutes(30)), set()!!.triggerAtMs)
        TimeZone.setDefault(TimeZone.getTimeZone("GMT-03:00"))
        tell(Intent(Intent.ACTION_TIMEZONE_CHANGED))
        assertEquals(millis(now.plusMinutes(270)), set()!!.triggerAtMs)
    }

    @Test
    fun `without the permission everything goes on`() {
        shadowOf(RuntimeEnvironment.getApplication()).denyPermissions(Manifest.permission.POST_NOTIFICATIONS)
        assertTrue(Notices(context).mustBeAsked())
        assertFalse(Notices(context).allowed())
        Reminders(context).replace(plan(inMinutes(-1, 60)))
        Reminders(context).came()
        Reminders(context).putOff()
        Reminders(context).done()
        assertNotNull(set())
    }

    @Test
    fun `a plan that cannot be read is no plan`() {
        Reminders(context).replace(plan(inMinutes(30)))
        context.noBackupFilesDir.walk().single { it.isFile }.writeText("something else")
        tell(Intent(Intent.ACTION_BOOT_COMPLETED))
        Reminders(context).came()
        Reminders(context).putOff()
        assertNull(shown())
    }
}
