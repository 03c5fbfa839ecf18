package frond.home

import android.app.Application
import android.os.Handler
import android.os.Looper
import android.os.SystemClock
import android.provider.Settings
import frond.core.Covered
import frond.core.Frond
import frond.core.KeyKeeper
import frond.core.Moment
import frond.home.door.Door
import frond.home.door.RealDoor
import java.io.File
import java.time.Instant
import java.time.ZoneId
import java.util.Locale
import java.util.concurrent.ExecutorService
import java.util.concurrent.Executors

/** The app while its process lives: one door to the core, and one thread behind it. */
open class FrondApp : Application() {
    /** The one thread that talks to the core. */
    val behind: ExecutorService by lazy { Executors.newSingleThreadExecutor { Thread(it, "core") } }

    private var made: RealDoor? = null

    /** The one door. */
    val door: Door get() = made ?: make().also { made = it }

    private fun make(): RealDoor {
        val front = Handler(Looper.getMainLooper())
        return RealDoor(behind, { front.post(it) }, ::now) {
            Frond(folder().path, Locale.getDefault().toLanguageTag(), COVERED, keeper())
        }
    }

    /** Puts the core away; whoever asks next has a new one. A phone does it by ending the process. */
    protected fun end() {
        made?.end()
        made = null
    }

    /** Where the diary lies: inside the app's own folder, and out of the system's backups. */
    protected open fun folder(): File = noBackupFilesDir.resolve("diary")

    /** What keeps the diary's key. */
    protected open fun keeper(): KeyKeeper = throw UnsupportedOperationException("comes with the duties")

    /** What the phone's clocks say. */
    protected open fun now(): Moment {
        val wall = Instant.now()
        val zone = ZoneId.systemDefault()
        return Moment(
            wallMillis = wall.toEpochMilli(),
            zone = zone.id,
            offsetMinutes = zone.rules.getOffset(wall).totalSeconds / 60,
            boot = Settings.Global.getInt(contentResolver, Settings.Global.BOOT_COUNT, 0).toULong(),
            elapsedMillis = SystemClock.elapsedRealtime().toULong(),
        )
    }

    private companion object {
        /** What this app does so that others see less; each is tested. */
        val COVERED = Covered(screen = true, keyboard = true, backups = true, reminders = true, leaves = true)
    }
}
