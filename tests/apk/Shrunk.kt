// A diary kept through the classes as R8 leaves them: tests/apk/run makes the app's classes small with the very rules of
// the package, this main with them, and runs the result on this machine. What JNA or UniFFI reach by a name that R8 took
// away fails here. It decides nothing and tests no screen.
package frond.shrunk

import frond.core.Although
import frond.core.Covered
import frond.core.Does
import frond.core.FeelsReady
import frond.core.Frond
import frond.core.FrondException
import frond.core.HandedOver
import frond.core.KeeperTrouble
import frond.core.KeyKeeper
import frond.core.Moment
import frond.core.Request
import frond.core.Screen
import frond.core.Seen
import frond.core.Told
import frond.core.View
import frond.core.WholeRequest
import frond.core.WholeScreen
import frond.core.Write

/** A key store that keeps nothing secret, and refuses when told to. */
private class Keeper : KeyKeeper {
    var refuses = false
    var calls = 0
    private val marks = HashMap<String, ByteArray>()

    private fun turned(bytes: ByteArray): ByteArray {
        calls++
        if (refuses) throw KeeperTrouble.Refused()
        return ByteArray(bytes.size) { (bytes[it].toInt() xor 0x5a).toByte() }
    }

    override fun wrap(key: ByteArray) = turned(key)

    override fun unwrap(wrap: ByteArray) = turned(wrap)

    override fun keepOnly(wrap: ByteArray) = Unit

    override fun forget() = Unit

    override fun keepMark(diary: ByteArray, mark: ByteArray) {
        marks[diary.contentToString()] = mark
    }

    override fun keptMark(diary: ByteArray) = marks[diary.contentToString()]

    override fun forgetMark(diary: ByteArray) {
        marks.remove(diary.contentToString())
    }
}

/** What the app covers: all of it. */
private val COVERED = Covered(true, true, true, true, true, true)

private fun moment(minute: Long) = Moment(1_772_475_600_000 + minute * 60_000, "Europe/London", 0, 1u, (minute * 60_000).toULong())

private fun must(holds: Boolean, what: String) {
    if (!holds) throw IllegalStateException(what)
    println("ok: $what")
}

private fun screen(seen: Seen): Screen? = (seen.view as? View.Screen)?.v1

fun main(arguments: Array<String>) {
    val keeper = Keeper()
    val folder = arguments[0]
    val frond = Frond(folder, "en", COVERED, keeper)
    begin(frond)
    must(screen(frond.ask(Request.Today, moment(1))) is Screen.Today, "an empty diary answers with Today")
    must(keeper.calls > 0, "the core called the keeper")
    val plan = HandedOver.File(java.io.File(arguments[1]).readBytes())
    must(screen(frond.ask(Request.Accept(plan), moment(2))) is Screen.Accept, "a plan is read")
    frond.ask(write(1, Told.Programme(plan, listOf(Although.UNSIGNED))), moment(3))
    frond.ask(write(2, Told.FeelsReady(FeelsReady.YES)), moment(4))
    val today = screen(frond.ask(Request.Today, moment(5)))
    must(today is Screen.Today && today.v1.step != null, "the plan's step is on Today")
    must(screen(frond.press(Does.Plan, moment(5))) is Screen.Plan, "a button leads to its screen")
    must(refusal { frond.ask(write(3, Told.Question("")), moment(6)) } is FrondException.PutRight, "an empty question is refused in words")
    frond.close()
    keeper.refuses = true
    val stuck = Frond(folder, "en", COVERED, keeper)
    val seen = runCatching { begin(stuck); screen(stuck.ask(Request.Today, moment(7))) }
    must(seen.getOrNull() == null, "a keeper that throws opens nothing")
    keeper.refuses = false
    must(screen(Frond(folder, "en", COVERED, keeper).also(::begin).ask(Request.Entries, moment(8))) is Screen.Entries, "the diary opens again")
}

private fun begin(frond: Frond) {
    val seen = frond.whole(WholeRequest.Begin, moment(0))
    val whole = (seen.view as? View.Whole)?.v1
    if (whole is WholeScreen.NoDiary) frond.whole(WholeRequest.StartNew, moment(0))
}

private fun write(number: Int, told: Told) = Request.Write(Write(number.toString(16).padStart(32, '0'), null, told))

private fun refusal(act: () -> Unit): Throwable? = runCatching(act).exceptionOrNull()
