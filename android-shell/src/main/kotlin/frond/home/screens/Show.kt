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
    is Screen.Entries -> notYet(screen.v1.title)
    is Screen.Plan -> notYet(screen.v1.title)
    is Screen.Kept -> notYet(screen.v1.title)
    is Screen.Keeping -> notYet(screen.v1.title)
    is Screen.Erase -> notYet(screen.v1.title)
    is Screen.FirstRun -> notYet(screen.v1.title)
    is Screen.More -> notYet(screen.v1.title)
    is Screen.Calendar -> notYet(screen.v1.title)
    is Screen.Entry -> notYet(screen.v1.title)
    is Screen.Correct -> notYet(screen.v1.title)
    is Screen.Questions -> notYet(screen.v1.title)
    is Screen.Activities -> notYet(screen.v1.title)
    is Screen.TimeOff -> notYet(screen.v1.title)
    is Screen.LookForward -> notYet(screen.v1.title)
    is Screen.Settled -> notYet(screen.v1.title)
    is Screen.Ending -> notYet(screen.v1.title)
    is Screen.Shows -> notYet(screen.v1.title)
    is Screen.Settings -> notYet(screen.v1.title)
    is Screen.Summary -> notYet(screen.v1.title)
    is Screen.Practices -> notYet(screen.v1.title)
    is Screen.AnythingNew -> notYet(screen.v1.title)
    is Screen.Breathing -> notYet(screen.v1.title)
    is Screen.Running -> running(screen.v1)
    is Screen.Found -> notYet(screen.v1.title)
    is Screen.Stopped -> notYet(screen.v1.title)
    is Screen.Rate -> notYet(screen.v1.title)
    is Screen.Screening -> notYet(screen.v1.title)
    is Screen.HoldQuestions -> notYet(screen.v1.title)
    is Screen.Accept -> notYet(screen.v1.title)
    is Screen.StepCheck -> notYet(screen.v1.title)
    is Screen.Reminders -> notYet(screen.v1.title)
    is Screen.Ready -> notYet(screen.v1.title)
}

private fun Page.whole(screen: WholeScreen): Unit = when (screen) {
    is WholeScreen.NoDiary -> noDiary(screen.v1)
    is WholeScreen.Code -> code(screen.v1)
    is WholeScreen.SetCode -> notYet(screen.v1.title)
    is WholeScreen.CannotOpen -> notYet(screen.v1.title)
    is WholeScreen.Erased -> notYet(screen.v1.title)
    is WholeScreen.Phrase -> notYet(screen.v1.title)
    is WholeScreen.PhraseCheck -> notYet(screen.v1.title)
    is WholeScreen.Copy -> notYet(screen.v1.title)
    is WholeScreen.Restore -> notYet(screen.v1.title)
    is WholeScreen.RestoreCopy -> notYet(screen.v1.title)
    is WholeScreen.Restoring -> notYet(screen.v1.title)
    is WholeScreen.OpenByPhrase -> notYet(screen.v1.title)
    is WholeScreen.EraseDays -> notYet(screen.v1.title)
    is WholeScreen.AddPlan -> notYet(screen.v1.title)
    is WholeScreen.Done -> notYet(screen.v1.title)
    is WholeScreen.Sorry -> notYet(screen.v1.title)
}

/** A record that has no view so far. A test counts these, and there must be none. */
private fun Page.notYet(title: String) {
    title(title)
    val mark = words("NOT YET")
    mark.id = R.id.not_yet
    add(mark)
}
