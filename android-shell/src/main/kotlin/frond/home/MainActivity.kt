package frond.home

import android.app.Activity
import android.content.Intent
import android.content.res.Configuration
import android.os.Bundle
import android.view.ContextThemeWrapper
import android.view.KeyEvent
import android.view.WindowManager
import frond.core.Does
import frond.core.Duty
import frond.core.FormWords
import frond.core.Screen
import frond.core.View
import frond.core.WholeRequest
import frond.core.limits
import frond.home.door.Answer
import frond.home.duties.PhoneDuties
import frond.home.duties.files.Incoming
import frond.home.duties.files.SharedFiles
import frond.home.duties.leaving.ClosedView
import frond.home.duties.leaving.Cover
import frond.home.duties.leaving.LockClock
import frond.home.duties.leaving.QuickExit
import frond.home.duties.reminders.Reminders
import frond.home.parts.Drafts
import frond.home.parts.FormState
import frond.home.parts.Frame
import frond.home.parts.ToPress
import frond.home.parts.toTheEdges
import frond.home.screens.Page
import frond.home.screens.controls
import frond.home.screens.foot
import frond.home.screens.show
import frond.home.ways.BackInside
import frond.home.ways.Shows
import frond.home.ways.Ways
import java.util.Locale

/**
 * The one window. It shows what the ways lead to and hands on what the phone tells; it decides nothing. Over a rotation the
 * ways themselves are handed to the next window; when the phone ends the process, only addresses are kept.
 */
class MainActivity : Activity(), Shows {
    internal lateinit var ways: Ways
        private set
    private val back = BackInside(this) { ways.back() }
    private val app get() = application as FrondApp
    private val phone by lazy { PhoneDuties(this, app.waiting, app.beside, ::limits, { checkNotNull(words) }) { frame?.told(it) } }
    private val lock by lazy { LockClock(this, { app.door.coded }, ::lockNow, ::lockAfter) }
    private var frame: Frame? = null
    private var words: FormWords? = null
    private var shows = false

    override fun onCreate(state: Bundle?) {
        super.onCreate(state)
        Cover.activity(this)
        window.toTheEdges()
        lock.begin()
        // What was shared before is wiped, and the alarm of the next reminder is set anew.
        val context = applicationContext
        if (state == null) app.beside.execute {
            SharedFiles.wipe(context)
            Reminders(context).again()
        }
        // What came before the process was ended has been taken already.
        if (state != null) Incoming.taken(this)
        @Suppress("DEPRECATION")
        val before = lastNonConfigurationInstance as? Ways
        ways = before ?: Ways(app.door).apply {
            state?.getStringArrayList(WHERE)?.let(::restore)
        }
        ways.changed = back::enable
        val left = QuickExit.wasLeft(this)
        if (left == null) attach() else setContentView(ClosedView(this, left, ::open))
    }

    private fun attach() {
        shows = true
        ways.attach(this)
    }

    /** Asked for on the screen without content, after the app was left at once. */
    private fun open() {
        QuickExit.opened(this)
        attach()
    }

    override fun onNewIntent(intent: Intent) {
        super.onNewIntent(intent)
        setIntent(intent)
        if (words != null) takeIncoming()
    }

    override fun onStart() {
        // First, so that nothing is shown that should be locked by now.
        lock.inFront()
        super.onStart()
    }

    override fun onRestart() {
        super.onRestart()
        if (shows) ways.comeBack()
    }

    override fun onStop() {
        super.onStop()
        lock.behind()
        // Nobody waits now: room is made for the next entries.
        app.door.tidy()
    }

    @Deprecated("The plain framework's own way to be answered by another program")
    override fun onActivityResult(request: Int, result: Int, data: Intent?) {
        super.onActivityResult(request, result, data)
        phone.answered(request, result, data)
    }

    override fun onRequestPermissionsResult(request: Int, asked: Array<out String>, results: IntArray) {
        super.onRequestPermissionsResult(request, asked, results)
        phone.allowed(request)
    }

    @Deprecated("The plain framework's own way to hand an object to the next window")
    override fun onRetainNonConfigurationInstance(): Any = ways

    override fun onSaveInstanceState(state: Bundle) {
        super.onSaveInstanceState(state)
        state.putStringArrayList(WHERE, ArrayList(ways.save()))
    }

    override fun onDestroy() {
        lock.end()
        // The window is gone and with it what counts the time: where there is a code, it locks now.
        if (!isChangingConfigurations && app.door.coded) app.door.whole(WholeRequest.Lock) {}
        phone.end()
        ways.detach()
        back.enable(false)
        super.onDestroy()
    }

    /** Phones before Android 13 send the key. */
    override fun onKeyUp(code: Int, event: KeyEvent): Boolean =
        if (code == KeyEvent.KEYCODE_BACK && !event.isCanceled && ways.back()) true else super.onKeyUp(code, event)

    override fun show(seen: Answer.Seen, drafts: Drafts, anew: Boolean) {
        val (view, words) = seen.view to seen.words
        val scrolled = frame?.scroll?.scrollY ?: 0
        val made = Frame(speaking(words), leave(words), if (seen.standing.open) notRight(words) else null)
        Page(made, form(words, drafts), ways, words, phone).apply {
            show(view)
            foot()
        }
        val first = this.words == null
        this.words = words
        frame = made
        keepScreenOn(view)
        Cover.touches(window, dropped = !needsEveryTouch(view))
        setContentView(made)
        if (anew) made.begin() else made.scroll.post { made.scroll.scrollTo(0, scrolled) }
        if (first) {
            phone.goOn()
            takeIncoming()
        }
    }

    private fun takeIncoming() = phone.incoming(
        intent,
        link = { ways.atOnce(WholeRequest.PlanLink(it, "")) },
        file = { ways.atOnce(WholeRequest.PlanFile(it, "")) },
    )

    /** What the person chose; longer while a program is in front that Frond opened. */
    private fun lockAfter(): Long {
        val chosen = app.door.lockAfterMillis ?: LockClock.OWN_MILLIS
        return if (phone.awaits) maxOf(chosen, LockClock.OWN_MILLIS) else chosen
    }

    /** Nothing stays in sight while the diary is being locked. */
    private fun lockNow() {
        frame = null
        setContentView(ClosedView.blank(this))
        ways.atOnce(WholeRequest.Lock)
    }

    /** Where a program that dims the screen must keep nobody from stopping or calling. */
    private fun needsEveryTouch(view: View) = view is View.Screen &&
        (view.v1 is Screen.Running || view.v1 is Screen.StopAndCall || view.v1 is Screen.Stopped || view.v1 is Screen.Signs)

    override fun carryOut(duties: List<Duty>) = duties.forEach(phone::carryOut)

    override fun busy(now: Boolean) {
        frame?.busy(words?.frame?.loading.takeIf { now })
    }

    override fun trouble(says: String, words: FormWords) {
        this.words = words
        frame?.let { return it.trouble(says) }
        // Nothing could be shown so far.
        val made = Frame(speaking(words), leave(words), null)
        Page(made, form(words, Drafts()), ways, words, phone).apply {
            title(words.frame.sorry)
            text(says)
            next(words.frame.tryAgain) { ways.begin() }
        }
        frame = made
        setContentView(made)
    }

    override fun kept(says: String) {
        frame?.told(says)
    }

    /** In the language of the core's words, whatever the phone's own is: letters, direction, pickers. */
    private fun speaking(words: FormWords) = ContextThemeWrapper(this, R.style.Frond).apply {
        val locale = Locale.forLanguageTag(words.language)
        applyOverrideConfiguration(Configuration(this@MainActivity.resources.configuration).apply { setLocale(locale) })
    }

    private fun form(words: FormWords, drafts: Drafts) = FormState(controls(words), drafts, app.door::say, app.door::say) { dialog ->
        Cover.dialog(dialog)
    }

    private fun leave(words: FormWords) = ToPress(words.frame.leave, words.frame.leaveSpoken, act = ::leaveAtOnce)

    /** In reach from every screen of an open diary. */
    private fun notRight(words: FormWords) = ToPress(words.frame.notRight, what = NOT_RIGHT) { ways.press(Does.Signs) }

    /** One press: out of sight, out of the list of recent apps; what opens the diary leaves memory where there is a code. */
    private fun leaveAtOnce() {
        val outside = words?.outside
        if (app.door.coded) app.door.whole(WholeRequest.Lock) {}
        QuickExit.leave(this, QuickExit.Words(outside?.closed.orEmpty(), outside?.open.orEmpty()))
    }

    /** While a practice is shown the screen stays on; on any other it may go dark. */
    private fun keepScreenOn(view: View) {
        val practising = view is View.Screen && view.v1 is Screen.Running
        if (practising) window.addFlags(WindowManager.LayoutParams.FLAG_KEEP_SCREEN_ON)
        else window.clearFlags(WindowManager.LayoutParams.FLAG_KEEP_SCREEN_ON)
    }

    private companion object {
        const val WHERE = "where"
        const val NOT_RIGHT = "not-right"
    }
}
