package frond.home.duties.reminders

import android.app.AlarmManager
import android.app.PendingIntent
import android.content.Context
import android.content.Intent
import frond.home.FrondApp
import java.time.Clock
import java.time.Instant
import java.time.ZoneId

/**
 * Reminders on a phone. Decides that exactly one alarm is set at any time, for the next reminder; that it is inexact and
 * needs no permission; and what happens when it comes, is put off or is done with. Leaves to the core when reminders come
 * and what they say, and to [Notices] how one is shown.
 *
 * An inexact alarm may come late, and on a sleeping phone much later. What comes too late, by what the core said, is not
 * shown.
 */
class Reminders(
    private val context: Context,
    private val clock: Clock = (context.applicationContext as? FrondApp)?.clock ?: Clock.systemUTC(),
) {
    private val store = ReminderStore(context)
    private val notices = Notices(context)

    /** The duty: this plan and no other. One put off before is dropped: whoever has opened Frond was reminded. */
    fun replace(plan: ReminderPlan) {
        if (plan.times.isEmpty()) {
            forget()
            return
        }
        store.keep(plan)
        setNext(plan)
    }

    /** No reminder at all any more: they were turned off, or the diary was erased. */
    fun forget() {
        store.clear()
        alarms().cancel(alarm())
        notices.takeAway()
    }

    /** Forgets them, and answers how to have them again. */
    fun takeBack(): () -> Unit {
        val plan = store.kept()
        forget()
        return { if (plan != null) replace(plan) }
    }

    /** Sets the alarm anew by what is kept: after a restart, another time or zone, an update, and at every launch. */
    fun again() {
        store.kept()?.let(::setNext)
    }

    /** An alarm came. */
    fun came() {
        val plan = store.kept() ?: return
        plan.due(now(), zone())?.let { due -> notices.show(plan, due, now(), zone()) }
        setNext(plan)
    }

    /** The person puts off the notice that is shown. */
    fun putOff() {
        notices.takeAway()
        val plan = store.kept() ?: return
        val again = plan.again(now(), zone()) ?: return
        val longer = plan.with(again)
        store.keep(longer)
        setNext(longer)
    }

    /** The person is done with the notice. Nothing is written down by it. */
    fun done() = notices.takeAway()

    private fun setNext(plan: ReminderPlan) {
        val next = plan.next(now(), zone())
        if (next == null) {
            alarms().cancel(alarm())
        } else {
            alarms().setWindow(AlarmManager.RTC_WAKEUP, next.at(zone()).toEpochMilli(), WINDOW_MILLIS, alarm())
        }
    }

    private fun alarm(): PendingIntent = ReminderReceiver.pending(context, ReminderReceiver.CAME)

    private fun alarms(): AlarmManager = context.getSystemService(AlarmManager::class.java)

    private fun now(): Instant = clock.instant()

    // Asked each time: the zone changes while the process lives.
    private fun zone(): ZoneId = ZoneId.systemDefault()

    companion object {
        /** The least window that Android gives an app without the permission for exact alarms, 10 minutes. */
        const val WINDOW_MILLIS = 10 * 60 * 1000L

        /** Broadcasts after which the alarm has to be set anew. */
        val PLAN_ANEW = setOf(
            Intent.ACTION_BOOT_COMPLETED,
            Intent.ACTION_TIME_CHANGED,
            Intent.ACTION_TIMEZONE_CHANGED,
            Intent.ACTION_MY_PACKAGE_REPLACED,
        )
    }
}
