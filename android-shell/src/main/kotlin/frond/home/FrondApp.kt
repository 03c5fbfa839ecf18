package frond.home

import android.app.Application
import android.os.Handler
import android.os.Looper
import frond.core.Covered
import frond.core.Frond
import frond.core.KeyKeeper
import frond.core.Moment
import frond.home.door.ErasesLast
import frond.home.door.KeptLanguage
import frond.home.door.RealDoor
import frond.home.door.Stands
import frond.home.duties.files.Waiting
import frond.home.duties.keys.PhoneKeys
import frond.home.duties.reminders.Reminders
import frond.home.duties.senses.PhoneClock
import java.io.File
import java.time.Clock
import java.util.concurrent.ExecutorService
import java.util.concurrent.Executors

/** The app while its process lives: one door to the core, and one thread behind it. */
open class FrondApp : Application() {
    /** The one thread that talks to the core. */
    val behind: ExecutorService by lazy { Executors.newSingleThreadExecutor { Thread(it, "core") } }

    /** One more, for files and reminders, so that a slow file keeps nobody waiting. */
    val beside: ExecutorService by lazy { Executors.newSingleThreadExecutor { Thread(it, "files") } }

    /** What waits while another program is in front. */
    var waiting = Waiting()
        private set

    private var real: RealDoor? = null
    private var made: Stands? = null
    private val language by lazy { KeptLanguage(noBackupFilesDir.resolve("language")) }

    override fun onCreate() {
        super.onCreate()
        Faults.watch()
    }

    /** The one door. */
    val door: Stands get() = made ?: make().also { made = it }

    private fun make(): Stands {
        val front = Handler(Looper.getMainLooper())
        val door = RealDoor(behind, { front.post(it) }, ::now) {
            val speaks = language.kept() ?: resources.configuration.locales[0].toLanguageTag()
            Frond(folder().path, speaks, COVERED, keeper())
        }
        real = door
        val erases = ErasesLast(door, behind) {
            language.forget()
            Reminders(this).takeBack()
        }
        return Stands(erases) { stands -> beside.execute { language.note(stands) } }
    }

    /** Puts the core away; whoever asks next has a new one. A phone does it by ending the process. */
    protected fun end() {
        real?.end()
        real = null
        made = null
        waiting = Waiting()
    }

    /** Where the diary lies: inside the app's own folder, and out of the system's backups. */
    protected open fun folder(): File = noBackupFilesDir.resolve("diary")

    /** What keeps the diary's key. */
    protected open fun keeper(): KeyKeeper = PhoneKeys(this)

    /** The wall clock that reminders go by. */
    open val clock: Clock = Clock.systemUTC()

    /** What the phone's clocks say. */
    protected open fun now(): Moment {
        val time = PhoneClock.read(this)
        return Moment(
            wallMillis = time.wallMillis,
            zone = time.zoneId,
            offsetMinutes = time.offsetMinutes,
            boot = (time.boot ?: 0).toULong(),
            elapsedMillis = time.elapsedMillis.toULong(),
        )
    }

    private companion object {
        /** What this app does so that others see less; each is tested. */
        val COVERED = Covered(screen = true, pictures = true, keyboard = true, backups = true, reminders = true, leaves = true)
    }
}
