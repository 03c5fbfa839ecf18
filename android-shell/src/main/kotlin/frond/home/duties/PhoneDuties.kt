package frond.home.duties

import android.Manifest
import android.app.Activity
import android.content.ActivityNotFoundException
import android.content.Intent
import android.provider.Settings
import android.view.View
import android.view.WindowManager
import frond.core.CueKind
import frond.core.Duty
import frond.core.FormWords
import frond.core.Limits
import frond.core.Mark
import frond.core.Phase
import frond.core.PlanReminders
import frond.core.SharedFile
import frond.home.duties.files.Documents
import frond.home.duties.files.DocumentsSeen
import frond.home.duties.files.Incoming
import frond.home.duties.files.LeavingFile
import frond.home.duties.files.OpenFile
import frond.home.duties.files.Opening
import frond.home.duties.files.Read
import frond.home.duties.files.Saved
import frond.home.duties.files.SealedFile
import frond.home.duties.files.Waiting
import frond.home.duties.leaving.Clip
import frond.home.duties.reminders.ReminderPlan
import frond.home.duties.reminders.ReminderTime
import frond.home.duties.reminders.ReminderWords
import frond.home.duties.reminders.Reminders
import frond.home.duties.senses.Beat
import frond.home.duties.senses.CueChoice
import frond.home.duties.senses.Cues
import frond.home.duties.senses.Dialler
import frond.home.duties.senses.EndBell
import frond.home.duties.senses.PhoneVoice
import frond.home.duties.senses.SoftTones
import frond.home.screens.Bell
import frond.home.screens.Cueing
import frond.home.screens.Notices
import frond.home.screens.Phone
import java.io.File
import java.io.IOException
import java.util.concurrent.Executor
import frond.home.duties.reminders.Notices as ShownNotices

/**
 * Carries out what the core asks of the phone, and does for screens what only a phone can. Decides which room of the duties
 * does what, and what is said of it; on the main thread alone.
 *
 * [work] is one thread of its own, so that plans of reminders keep their order and a slow file keeps nobody waiting. [say]
 * shows a line and speaks it, or takes away the one that is shown.
 */
internal class PhoneDuties(
    private val activity: Activity,
    private val waiting: Waiting,
    private val work: Executor,
    private val limits: () -> Limits,
    private val words: () -> FormWords,
    private val say: (String?) -> Unit,
) : Phone, DocumentsSeen {
    private val documents = Documents(activity, waiting, work, this) { opening ->
        when (opening) {
            Opening.PLAN -> limits().planFileBytes.toLong()
            Opening.COPY -> limits().copyBytes.toLong()
        }
    }
    private val questions = Questions(activity)
    private val clip = Clip(activity)
    private val shown = ShownNotices(activity)
    private var answered: (() -> Unit)? = null

    /** One duty. */
    fun carryOut(duty: Duty) = when (duty) {
        is Duty.OpenDialler -> dial(duty.number)
        is Duty.KeepScreenOn -> activity.window.addFlags(WindowManager.LayoutParams.FLAG_KEEP_SCREEN_ON)
        is Duty.PlanReminders -> remember(duty.v1)
        is Duty.ShareFile -> leave(leaving(duty.v1))
    }

    /** Whether a program is in front that was opened to choose a file or a place. */
    val awaits: Boolean get() = waiting.opening != null || waiting.saving != null

    /** Another window shows now, after a rotation: what was being asked is asked again. */
    fun goOn() {
        waiting.leaving?.let(::leave)
    }

    /** The window goes. */
    fun end() = questions.end()

    /** The answer of another program; whether it was for us. */
    fun answered(request: Int, result: Int, data: Intent?): Boolean = documents.answered(request, result, data)

    /** The person answered the phone's own question about notices. */
    fun allowed(request: Int) {
        if (request == NOTICES) answered.also { answered = null }?.invoke()
    }

    /** What another program hands over. It is taken at once, so that it comes once. */
    fun incoming(intent: Intent?, link: (String) -> Unit, file: (ByteArray) -> Unit) {
        val came = Incoming.of(intent, limits().linkBytes) ?: return
        Incoming.taken(activity)
        when (came) {
            is Incoming.Link -> link(came.text)
            is Incoming.TooLarge -> say(words().files.tooLarge)
            is Incoming.File -> {
                waiting.chosen = { read ->
                    when (read) {
                        is Read.Bytes -> file(read.bytes)
                        is Read.TooLarge -> say(words().files.tooLarge)
                        else -> say(words().files.unreadable)
                    }
                }
                documents.read(Opening.PLAN, came.uri)
            }
        }
    }

    override fun cues(chosen: List<CueKind>, language: String): Cueing {
        val choice = CueChoice(CueKind.TONE in chosen, CueKind.VIBRATION in chosen, CueKind.WORD in chosen)
        // Another program is woken only where its voice was chosen.
        val voice = if (choice.word) PhoneVoice(activity, language) else NoVoice
        val cues = Cues(activity, choice, SoftTones(), voice)
        return object : Cueing {
            override fun tell(phase: Phase?, word: String, at: View) = cues.tell(beat(phase), word, at)

            override fun silence() = cues.silence()

            override fun end() = cues.end()
        }
    }

    override fun bell(mark: Mark, language: String, at: View): Bell {
        val cueing = cues(mark.cues, language)
        return EndBell(activity, mark.inMillis.toLong(), tell = { cueing.tell(null, mark.says, at) }, over = cueing::end)
    }

    override fun chooseFile(opening: Opening, chosen: (Read?) -> Unit) {
        waiting.chosen = chosen
        documents.open(opening)
    }

    override fun paste(): String? {
        val text = clip.pasted() ?: return null
        if (text.length > limits().linkBytes) {
            say(words().files.tooLarge)
            return null
        }
        if (clip.linkTaken()) say(words().fields.clipboardCleared)
        return text.toString()
    }

    override val notices: Notices
        get() = when {
            shown.allowed() -> Notices.ALLOWED
            shown.mustBeAsked() && (!asked().exists() || mayAskAgain()) -> Notices.ASK
            else -> Notices.REFUSED
        }

    override fun askNotices(answered: () -> Unit) {
        if (!shown.mustBeAsked()) return answered()
        try {
            asked().createNewFile()
        } catch (_: IOException) {
            // Then it is offered once more.
        }
        this.answered = answered
        activity.requestPermissions(arrayOf(Manifest.permission.POST_NOTIFICATIONS), NOTICES)
    }

    override fun openNoticeSettings() {
        val asks = Intent(Settings.ACTION_APP_NOTIFICATION_SETTINGS).putExtra(Settings.EXTRA_APP_PACKAGE, activity.packageName)
        try {
            activity.startActivity(asks)
        } catch (_: ActivityNotFoundException) {
            say(words().notices.refused)
        }
    }

    override fun working(saving: Boolean) = say(if (saving) words().files.saving else words().files.reading)

    override fun saved(saved: Saved) {
        // A picker that could not even be opened chose nothing.
        if (saved == Saved.NO_PROGRAM) waiting.takeChosen()
        val files = words().files
        say(
            when (saved) {
                Saved.DONE -> files.saved
                Saved.NOTHING -> files.notSaved
                Saved.FAILED -> files.cannotSave
                Saved.NO_PROGRAM -> files.noFiles
            },
        )
    }

    override fun handedOver() = say(null)

    override fun read(opening: Opening, read: Read?) {
        // That it is being read is not so any more; what came of it is said where the file was asked for.
        say(null)
        waiting.takeChosen()?.invoke(read)
    }

    private fun dial(number: String) {
        if (!Dialler.open(activity, number)) questions.number(number, words())
    }

    private fun remember(plan: PlanReminders) {
        val outside = words().outside
        val times = plan.reminders.map { one ->
            ReminderTime.of(one.at.millis, one.at.offsetSeconds, one.until.millis, one.until.offsetSeconds)
        }
        val says = ReminderWords(plan.words, outside.channel, outside.later, outside.done)
        val context = activity.applicationContext
        work.execute { Reminders(context).replace(ReminderPlan(times, says, plan.putOff)) }
    }

    private fun leave(file: LeavingFile) {
        waiting.leaving = file
        questions.whither(
            file, words(),
            save = { waiting.takeLeaving()?.let(documents::save) },
            share = { sealed ->
                waiting.takeLeaving()
                documents.share(sealed, words().outside.share)
            },
            not = {
                waiting.takeLeaving()
                say(words().files.notSaved)
            },
        )
    }

    private fun mayAskAgain() = activity.shouldShowRequestPermissionRationale(Manifest.permission.POST_NOTIFICATIONS)

    private fun asked() = File(activity.noBackupFilesDir, "asked")

    companion object {
        const val NOTICES = 44

        /** The one place where it is decided that a file is sealed: the core has said so. */
        fun leaving(file: SharedFile): LeavingFile =
            if (file.sealed) SealedFile(file.name, file.mime, file.bytes) else OpenFile(file.name, file.mime, file.bytes)

        private fun beat(phase: Phase?): Beat = when (phase) {
            Phase.IN -> Beat.IN
            Phase.HOLD_IN, Phase.HOLD_OUT -> Beat.HOLD
            Phase.OUT -> Beat.OUT
            null -> Beat.OVER
        }
    }
}

private object NoVoice : frond.home.duties.senses.Voice {
    override fun say(word: String) = Unit

    override fun silence() = Unit

    override fun end() = Unit
}
