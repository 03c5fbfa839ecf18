package frond.home.screens

import frond.core.Does
import frond.core.PracticeCard
import frond.core.StepCard
import frond.core.TodayScreen

/** What today asks: one thing to do, the largest; what the plan says; that breathing is enough. */
internal fun Page.today(screen: TodayScreen) {
    title(screen.title)
    quiet(screen.date)
    screen.welcome?.let { welcome ->
        card(welcome.title) {
            text(welcome.says)
            equal(presses(welcome.actions))
        }
    }
    for (notice in screen.notices) {
        // What is next stands below, large, and not twice.
        val action = notice.action?.takeIf { it.does != screen.next.does }
        notice(listOf(notice.text)) { equal(presses(listOfNotNull(action))) }
    }
    screen.step?.let(::step)
    next(screen.next)
    text(screen.routines + screen.enough)
    // "Breathing is enough" is an answer, so its button stands right beside it.
    val (breathing, rest) = screen.actions.filter { it.does != screen.next.does }.partition { it.does is Does.Breathing }
    equally(breathing)
    screen.practices.forEach(::practice)
    text(screen.lookForward)
    also(rest)
    cautions(screen.cautions)
}

private fun Page.step(step: StepCard) = card(step.name) {
    text(step.instruction)
    if (step.folded) fold("numbers", words.tell.numbers) { numbers(step) } else numbers(step)
}

private fun frond.home.parts.Parts.numbers(step: StepCard) {
    points(step.parts)
    text(step.position)
    quiet(listOf(step.schedule) + step.done)
}

private fun Page.practice(practice: PracticeCard) = card(practice.name) {
    text(practice.instruction)
    quiet(listOf(practice.minutes, practice.schedule) + practice.done)
}
