package frond.home.screens

import android.os.Bundle
import frond.core.AfterStop
import frond.core.Although
import frond.core.Answer
import frond.core.AnythingNew
import frond.core.Begin
import frond.core.Chosen
import frond.core.Does
import frond.core.Ended
import frond.core.FeelsReady
import frond.core.FirstRunPage
import frond.core.FoundChoice
import frond.core.HandedOver
import frond.core.HoldCondition
import frond.core.Position
import frond.core.Practice
import frond.core.PracticeEvent
import frond.core.PresetId
import frond.core.Screen
import frond.core.Sign
import frond.core.SignGroup
import frond.core.StopReason
import frond.core.Told
import frond.home.looked.Opened
import frond.home.looked.Person
import frond.home.looked.Plans
import frond.home.looked.Shown
import frond.home.looked.go
import frond.home.looked.kept
import frond.home.looked.screen
import frond.home.looked.write
import frond.home.parts.Rated
import java.time.Duration

/**
 * A way through every screen of a day, by pressing what is there; the core behind it is the real one. [looked] is called
 * with a name wherever there is something to look at.
 */
internal class PatientWalk(shown: Shown, private val look: Boolean = true) {
    var opened = Opened(shown)
    val she get() = Person(opened)

    private fun looked(name: String) {
        if (look) opened.looked("patient-$name")
    }

    /** From no diary to Today. */
    fun firstRun() {
        she.press(Does.StartNew)
        if (!she.sees(Does.Breathing)) opened.activity.ways.press(Does.FirstRun(FirstRunPage.BREATHE)).also { opened.settle() }
        for (page in FirstRunPage.entries) {
            if (page != FirstRunPage.entries.first()) she.press(Does.FirstRun(page))
            looked("first-run-${page.name.lowercase()}")
        }
        she.press(Does.Today)
        looked("today-without-a-plan")
    }

    /** Breathing before any plan: begun, stopped, written down. */
    fun breathing() {
        she.press(Does.Breathing)
        looked("breathing")
        she.press(Does.Begin(Begin.Breathing(PresetId.Even, 3)))
        looked("breathing-ready")
        she.press(PracticeEvent.Begin(0))
        opened.pass(Duration.ofSeconds(7))
        looked("breathing-under-way")
        she.press(PracticeEvent.Pause)
        looked("breathing-paused")
        she.press(PracticeEvent.GoOn)
        opened.pass(Duration.ofSeconds(20))
        she.press(PracticeEvent.Stop)
        looked("breathing-stopped")
        she.press(AfterStop.NOTHING)
        she.press(Does.Rate)
        looked("breathing-rate")
        she.press(SEND)
        looked("breathing-rate-left")
        she.choose("rating-PEAK", Rated.RatherNot)
        she.press(SEND)
        looked("kept-breathing")
        she.press(Does.Today)
    }

    /** A plan is there: how it came is another test's. */
    fun plan(bytes: ByteArray = Plans.quick()) {
        opened.write(Told.Programme(HandedOver.File(bytes), listOf(Although.UNSIGNED)))
        opened.go(Does.StepCheck)
        looked("step-check")
        she.press(Does.ConfirmStep)
    }

    /** The whole list of cautions; sent once before it is complete. */
    fun screening() {
        opened.go(Does.Screening)
        check(!she.anythingChosen()) { "something is chosen beforehand" }
        // "No" to a group answers each of its questions: all of them stand there before anything is chosen.
        for (group in (opened.screen as Screen.Screening).v1.groups) {
            for (question in group.questions) check(opened.says(question.ask)) { "a question of ${group.group} is not there to be read" }
        }
        looked("screening")
        she.choose("group-${SignGroup.entries.first().name}", Answer.NOT_SURE)
        she.press(SEND)
        looked("screening-left")
        check(she.chosen("group-${SignGroup.entries.first().name}") == listOf(Answer.NOT_SURE)) { "what was answered is lost" }
        for (group in SignGroup.entries) she.choose("group-${group.name}", Answer.NO)
        she.press(SEND)
        looked("kept-screening")
        she.press(Does.Today)
        looked("today")
    }

    /** The questions about breath holds. */
    fun holds() {
        opened.go(Does.HoldQuestions)
        looked("hold-questions")
        she.press(SEND)
        looked("hold-questions-left")
        for (condition in HoldCondition.entries) she.choose("condition-${condition.name}", Answer.NO)
        she.press(SEND)
    }

    /** A timed session with trainers, up to the moment it runs. */
    fun begin() {
        opened.go(Does.Practices)
        looked("practices")
        // The whole list was answered just now: nothing else is asked before.
        she.press(Does.Begin(Begin.Step))
        looked("trainer-ready")
        she.press(PracticeEvent.Begin(0))
        opened.pass(Duration.ofSeconds(65))
        looked("trainer-under-way")
    }

    /** The process ends in the middle; the practice is found again. */
    fun found() {
        val state = Bundle()
        opened.controller.saveInstanceState(state).pause().stop().destroy()
        opened.app.newProcess()
        opened = Opened(opened.shown, state)
        looked("found")
        she.press(FoundChoice.GO_ON)
        looked("trainer-found")
        if (she.sees(PracticeEvent.GoOn)) she.press(PracticeEvent.GoOn)
    }

    /** Another session on the same day is asked for first; she leaves it for today. */
    fun again() {
        opened.go(Does.Practices)
        she.press(Does.Begin(Begin.Step))
        looked("anything-new")
        she.press(AnythingNew.NOT_TODAY)
        looked("kept-not-today")
    }

    /** It is finished and rated; sent once before it is complete. */
    fun finish() {
        opened.pass(Duration.ofMinutes(5))
        she.press(PracticeEvent.Enough(0))
        if (she.sees(Does.Rate)) {
            looked("trainer-finished")
            she.press(Does.Rate)
        }
        check(!she.anythingChosen()) { "something is chosen beforehand" }
        looked("rate")
        she.choose("rating-PEAK", Rated.Number(2))
        she.press(SEND)
        looked("rate-left")
        check(she.chosen("rating-PEAK") == listOf(Rated.Number(2))) { "what was answered is lost" }
        for (name in she.fields().filter { it.startsWith("rating-") && she.chosen(it).isEmpty() }) she.choose(name, Rated.RatherNot)
        she.press(SEND)
        looked("kept-session")
    }

    /** What the rule says, and why; ready; the steps. */
    fun suggestion() {
        opened.go(Does.Suggestion)
        looked("suggestion-hold")
        she.press(Does.FeelsReady)
        looked("ready")
        she.press(FeelsReady.YES)
        opened.go(Does.Suggestion)
        she.unfold("why")
        looked("suggestion-reasons")
        opened.go(Does.Ladder)
        she.unfold("rung-2")
        looked("ladder")
    }

    /** The whole form, refused once, then kept; and put right. */
    fun logged() {
        opened.go(Does.LogSession)
        check(!she.anythingChosen()) { "something is chosen beforehand" }
        looked("log")
        she.press(SEND)
        looked("log-left")
        she.choose("practice", Practice.Trainer)
        she.choose("size", 140)
        she.choose("position", Position.ON_BACK)
        she.type("minutes", "6")
        she.choose("ended", Ended.Stopped(StopReason.DISCOMFORT))
        she.type("note", "A note of Juniper's, invented.")
        for (name in she.fields().filter { it.startsWith("rating-") }) she.choose(name, Rated.Number(4))
        she.press(SEND)
        looked("kept-stopped")
    }

    /** The session just kept is opened and put right. */
    fun corrected() {
        val entry = opened.kept()
        opened.go(Does.Correct(entry))
        check(she.chosen("size") == listOf(140) && she.typed("minutes") == "6") { "what stands there is not filled in" }
        looked("correct-session")
        she.choose("size", 100)
        she.press(SEND)
        looked("kept-correction")
    }

    /** What she told of her own accord, put right; each in the form that its kind has. */
    fun correctedOthers() {
        val day = java.time.LocalDate.of(2026, 5, 6)
        val told = listOf(
            "question" to Told.Question("May I swim? (invented)"),
            "look-forward" to Told.LookForward("A walk by the sea (invented)"),
            "activity" to Told.Function("Sitting through a film", 4),
            "goal" to Told.Goal("An examination without fear", -1),
            "time-off" to Told.TimeOff(day, day.plusDays(2)),
            "signs" to Told.Signs(listOf(Sign.SPOTTING), null),
        )
        for ((name, what) in told) {
            opened.go(Does.Correct(opened.write(what)))
            looked("correct-$name")
            she.press(SEND)
            check(opened.screen !is Screen.Correct) { "$name was not put right" }
        }
    }

    /** Something to look forward to; refused while it is empty. */
    fun lookForward() {
        opened.go(Does.LookForward)
        looked("look-forward")
        she.press(SEND)
        looked("look-forward-left")
        she.type("text", "Tea on the balcony (invented)")
        she.press(SEND)
        opened.go(Does.Today)
        check(opened.screen is Screen.Today) { "Today leads to \"${opened.title}\"" }
        looked("today-look-forward")
    }

    /** A caution of each kind, whom to call, and the talk that closes them. */
    fun signs() {
        opened.go(Does.Signs)
        check(!she.anythingChosen()) { "something is chosen beforehand" }
        looked("signs")
        she.press(SEND)
        looked("signs-left")
        report(Sign.PAIN_THAT_STAYS)
        looked("stop-and-call")
        report(Sign.NUMB_SADDLE)
        looked("stop-and-call-emergency")
        opened.go(Does.Today)
        looked("today-nothing-now")
        opened.go(Does.Suggestion)
        looked("suggestion-call")
        opened.go(Does.Spoke)
        check(!she.anythingChosen()) { "something is chosen beforehand" }
        looked("spoke")
        she.press(SEND)
        looked("spoke-left")
        she.type("with", "Ada Invented")
        for (open in (opened.screen as Screen.Spoke).v1.signs) she.choose("open", open.key)
        if ("pause" in she.fields()) she.choose("pause", true)
        she.press(SEND)
        looked("kept-spoke")
    }

    fun report(sign: Sign) {
        opened.go(Does.Signs)
        she.choose(she.fields().first { name -> name.startsWith("signs-") && sign in she.values(name) }, sign)
        she.press(SEND)
    }

    /** The day after a session that was felt. */
    fun settled() {
        val session = opened.write(session())
        opened.pass(Duration.ofSeconds(1))
        opened.app.wall = opened.app.wall.plus(Duration.ofDays(1))
        opened.go(Does.Today)
        check(opened.screen is Screen.Today) { "Today leads to \"${opened.title}\"" }
        looked("today-next-day")
        opened.go(Does.Settled(session))
        looked("settled")
        she.press(frond.core.Settled.NOT_YET)
        looked("kept-not-settled")
    }

    private fun session() = Told.Session(
        frond.core.SessionTold(
            Practice.Trainer, listOf(frond.core.UsedPart(100, 360u)), Position.ON_BACK, Ended.Finished,
            frond.core.Ratings(frond.core.RatingAnswer.Rated(5), null, null, null), emptyList(), null,
        ),
    )
}
