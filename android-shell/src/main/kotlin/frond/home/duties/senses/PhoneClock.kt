package frond.home.duties.senses

import android.content.Context
import android.os.SystemClock
import android.provider.Settings
import java.time.Instant
import java.time.ZoneId

/** What the phone's clocks say at one moment. */
data class PhoneTime(
    /** Wall clock, milliseconds since 1970 UTC. */
    val wallMillis: Long,
    /** Time zone, as the phone calls it. */
    val zoneId: String,
    /** Its offset now, in minutes east of UTC, for where the zone is not known. */
    val offsetMinutes: Int,
    /** Which start of the phone this is; `null` where the phone does not count them. */
    val boot: Long?,
    /** Milliseconds since that start, sleep included. */
    val elapsedMillis: Long,
)

/**
 * Reads the phone's clocks. A practice goes on by the running time alone: no service runs for it, and no alarm ends it;
 * the core works out at each look how far it is, after the process was ended too.
 */
object PhoneClock {
    /** Now. */
    fun read(context: Context): PhoneTime {
        val now = Instant.ofEpochMilli(System.currentTimeMillis())
        val zone = ZoneId.systemDefault()
        val boot = Settings.Global.getInt(context.contentResolver, Settings.Global.BOOT_COUNT, -1)
        return PhoneTime(
            wallMillis = now.toEpochMilli(),
            zoneId = zone.id,
            offsetMinutes = zone.rules.getOffset(now).totalSeconds / 60,
            boot = boot.toLong().takeIf { it >= 0 },
            elapsedMillis = SystemClock.elapsedRealtime(),
        )
    }
}
