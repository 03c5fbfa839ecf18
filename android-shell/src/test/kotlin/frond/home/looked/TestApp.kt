package frond.home.looked

import frond.core.KeyKeeper
import frond.core.Moment
import frond.home.FrondApp
import android.os.SystemClock
import java.time.Clock
import java.time.Instant
import java.time.ZoneId

/** The app with a key keeper in memory and a clock that the test moves; everything else is the app's own. */
class TestApp : FrondApp() {
    /** What keeps the key; another may be put in its place before anything is asked. */
    var keeper: KeyKeeper = SoftKeeper()

    /** The wall clock when the running time was nothing. It goes on with the running time. */
    var wall: Instant = Instant.parse("2026-03-02T09:00:00Z")

    /** Reminders go by the same clock. */
    override val clock: Clock = object : Clock() {
        override fun getZone(): ZoneId = ZoneId.systemDefault()

        override fun withZone(zone: ZoneId): Clock = this

        override fun instant(): Instant = wall.plusMillis(SystemClock.elapsedRealtime())
    }

    override fun keeper(): KeyKeeper = keeper

    /** The process ends as the phone ends it, without a word; the next window begins a new one. The key store stays. */
    fun newProcess() {
        end()
        behind.submit {}.get()
    }

    override fun now(): Moment {
        val wall = clock.instant()
        val zone = ZoneId.of("Europe/Madrid")
        return Moment(
            wall.toEpochMilli(), zone.id, zone.rules.getOffset(wall).totalSeconds / 60, 1u,
            SystemClock.elapsedRealtime().toULong(),
        )
    }
}
