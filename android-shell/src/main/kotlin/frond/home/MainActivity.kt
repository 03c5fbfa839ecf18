package frond.home

import android.app.Activity
import android.content.res.Configuration
import android.os.Bundle
import android.view.ContextThemeWrapper
import android.view.KeyEvent
import android.view.WindowManager
import frond.core.Does
import frond.core.Duty
import frond.core.FormWords
import frond.core.View
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
    private val phone by lazy { RealPhone(this) }
    private var frame: Frame? = null
    private var loading: String? = null

    override fun onCreate(state: Bundle?) {
        super.onCreate(state)
        window.setFlags(WindowManager.LayoutParams.FLAG_SECURE, WindowManager.LayoutParams.FLAG_SECURE)
        window.toTheEdges()
        @Suppress("DEPRECATION")
        val before = lastNonConfigurationInstance as? Ways
        ways = before ?: Ways((application as FrondApp).door).apply {
            state?.getStringArrayList(WHERE)?.let(::restore)
        }
        ways.changed = back::enable
        ways.attach(this)
    }

    override fun onRestart() {
        super.onRestart()
        ways.comeBack()
    }

    @Deprecated("The plain framework's own way to hand an object to the next window")
    override fun onRetainNonConfigurationInstance(): Any = ways

    override fun onSaveInstanceState(state: Bundle) {
        super.onSaveInstanceState(state)
        state.putStringArrayList(WHERE, ArrayList(ways.save()))
    }

    override fun onDestroy() {
        ways.detach()
        back.enable(false)
        super.onDestroy()
    }

    /** Phones before Android 13 send the key. */
    override fun onKeyUp(code: Int, event: KeyEvent): Boolean =
        if (code == KeyEvent.KEYCODE_BACK && !event.isCanceled && ways.back()) true else super.onKeyUp(code, event)

    override fun show(view: View, words: FormWords, drafts: Drafts, anew: Boolean) {
        val scrolled = frame?.scroll?.scrollY ?: 0
        val made = Frame(speaking(words), leave(words), notRight(view, words))
        Page(made, form(words, drafts), ways, words, phone).apply {
            show(view)
            foot()
        }
        frame = made
        loading = words.frame.loading
        keepScreenOn(view)
        setContentView(made)
        if (anew) made.begin() else made.scroll.post { made.scroll.scrollTo(0, scrolled) }
    }

    override fun carryOut(duties: List<Duty>) = duties.forEach(phone::carryOut)

    override fun busy(now: Boolean) {
        frame?.busy(loading.takeIf { now })
    }

    override fun trouble(says: String, words: FormWords) {
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

    /** In the language of the core's words, whatever the phone's own is: letters, direction, pickers. */
    private fun speaking(words: FormWords) = ContextThemeWrapper(this, R.style.Frond).apply {
        val locale = Locale.forLanguageTag(words.language)
        applyOverrideConfiguration(Configuration(this@MainActivity.resources.configuration).apply { setLocale(locale) })
    }

    private fun form(words: FormWords, drafts: Drafts) = FormState(controls(words), drafts) { dialog ->
        dialog.window?.setFlags(WindowManager.LayoutParams.FLAG_SECURE, WindowManager.LayoutParams.FLAG_SECURE)
    }

    private fun leave(words: FormWords) = ToPress(words.frame.leave, words.frame.leaveSpoken, act = ::leaveAtOnce)

    /** In reach from every screen of an open diary. */
    private fun notRight(view: View, words: FormWords): ToPress? = when (view) {
        is View.Screen -> ToPress(words.frame.notRight) { ways.press(Does.Signs) }
        is View.Whole -> null
    }

    /** One press: out of sight, out of the list of recent apps. */
    private fun leaveAtOnce() {
        finishAndRemoveTask()
    }

    /** While a practice is shown the screen stays on; on any other it may go dark. */
    private fun keepScreenOn(view: View) {
        val practising = view is View.Screen && view.v1 is frond.core.Screen.Running
        if (practising) window.addFlags(WindowManager.LayoutParams.FLAG_KEEP_SCREEN_ON)
        else window.clearFlags(WindowManager.LayoutParams.FLAG_KEEP_SCREEN_ON)
    }

    private companion object {
        const val WHERE = "where"
    }
}
