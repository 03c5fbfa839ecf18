package frond.home.screens

import frond.core.Screen
import frond.core.View
import frond.core.WholeScreen
import frond.home.R

// Which record is laid out by which function: every one there is, and no other. A new record of the core does not compile
// here before it has a view.

internal fun Page.show(view: View) = when (view) {
    is View.Screen -> screen(view.v1)
    is View.Whole -> whole(view.v1)
}

private fun Page.screen(screen: Screen): Unit = when (screen) {
    is Screen.Today -> today(screen.v1)
    is Screen.LogSession -> notYet(screen.v1.title)
    is Screen.Ladder -> notYet(screen.v1.title)
    is Screen.Suggestion -> notYet(screen.v1.title)
    is Screen.StopAndCall -> notYet(screen.v1.title)
    is Screen.Signs -> notYet(screen.v1.title)
    is Screen.Spoke -> notYet(screen.v1.title)
    is Screen.Entries -> entries(screen.v1)
    is Screen.Plan -> plan(screen.v1)
    is Screen.Kept -> notYet(screen.v1.title)
    is Screen.Keeping -> keeping(screen.v1)
    is Screen.Erase -> erase(screen.v1)
    is Screen.FirstRun -> notYet(screen.v1.title)
    is Screen.More -> more(screen.v1)
    is Screen.Calendar -> calendar(screen.v1)
    is Screen.Entry -> entry(screen.v1)
    is Screen.Correct -> notYet(screen.v1.title)
    is Screen.Questions -> questions(screen.v1)
    is Screen.Activities -> activities(screen.v1)
    is Screen.TimeOff -> timeOff(screen.v1)
    is Screen.LookForward -> notYet(screen.v1.title)
    is Screen.Settled -> notYet(screen.v1.title)
    is Screen.Ending -> ending(screen.v1)
    is Screen.Shows -> shows(screen.v1)
    is Screen.Settings -> settings(screen.v1)
    is Screen.Summary -> summary(screen.v1)
    is Screen.Practices -> notYet(screen.v1.title)
    is Screen.AnythingNew -> notYet(screen.v1.title)
    is Screen.Breathing -> notYet(screen.v1.title)
    is Screen.Running -> running(screen.v1)
    is Screen.Found -> notYet(screen.v1.title)
    is Screen.Stopped -> notYet(screen.v1.title)
    is Screen.Rate -> notYet(screen.v1.title)
    is Screen.Screening -> notYet(screen.v1.title)
    is Screen.HoldQuestions -> notYet(screen.v1.title)
    is Screen.Accept -> accept(screen.v1)
    is Screen.StepCheck -> notYet(screen.v1.title)
    is Screen.Reminders -> reminders(screen.v1)
    is Screen.Ready -> notYet(screen.v1.title)
}

private fun Page.whole(screen: WholeScreen): Unit = when (screen) {
    is WholeScreen.NoDiary -> noDiary(screen.v1)
    is WholeScreen.Code -> code(screen.v1)
    is WholeScreen.SetCode -> setCode(screen.v1)
    is WholeScreen.CannotOpen -> cannotOpen(screen.v1)
    is WholeScreen.Erased -> erased(screen.v1)
    is WholeScreen.Phrase -> phrase(screen.v1)
    is WholeScreen.PhraseCheck -> phraseCheck(screen.v1)
    is WholeScreen.Copy -> copy(screen.v1)
    is WholeScreen.Restore -> restoreChoice(screen.v1)
    is WholeScreen.RestoreCopy -> restoreCopy(screen.v1)
    is WholeScreen.Restoring -> restoring(screen.v1)
    is WholeScreen.OpenByPhrase -> openByPhrase(screen.v1)
    is WholeScreen.EraseDays -> eraseDays(screen.v1)
    is WholeScreen.AddPlan -> addPlan(screen.v1)
    is WholeScreen.Done -> done(screen.v1)
    is WholeScreen.Sorry -> sorry(screen.v1)
}

/** A record that has no view so far. A test counts these, and there must be none. */
private fun Page.notYet(title: String) {
    title(title)
    val mark = words("NOT YET")
    mark.id = R.id.not_yet
    add(mark)
}
