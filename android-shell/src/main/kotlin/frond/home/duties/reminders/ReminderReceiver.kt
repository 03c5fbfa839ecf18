package frond.home.duties.reminders

import android.app.PendingIntent
import android.content.BroadcastReceiver
import android.content.Context
import android.content.Intent

/** What comes to the app while it is not open: its own alarm, and the two buttons of its notice. Only the app can send it. */
class ReminderReceiver : BroadcastReceiver() {
    override fun onReceive(context: Context, intent: Intent) {
        val reminders = Reminders(context)
        when (intent.action) {
            CAME -> reminders.came()
            PUT_OFF -> reminders.putOff()
            DONE -> reminders.done()
        }
    }

    companion object {
        // Other programs that may read the list of alarms see these names: they say nothing.
        const val CAME = "frond.home.CAME"
        const val PUT_OFF = "frond.home.LATER"
        const val DONE = "frond.home.DONE"

        /** What sends [action] to this receiver; nothing else is in it, and nobody can put anything into it. */
        fun pending(context: Context, action: String): PendingIntent {
            val intent = Intent(context, ReminderReceiver::class.java).setAction(action)
            return PendingIntent.getBroadcast(context, 0, intent, PendingIntent.FLAG_IMMUTABLE)
        }
    }
}

/** After a restart, another time or zone, or an update, alarms are gone or wrong: they are set anew, without the diary. */
class PlanAnewReceiver : BroadcastReceiver() {
    override fun onReceive(context: Context, intent: Intent) {
        if (intent.action in Reminders.PLAN_ANEW) Reminders(context).again()
    }
}
