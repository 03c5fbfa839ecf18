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
    is Screen.LogSession -> notYet()
    is Screen.Ladder -> notYet()
    is Screen.Suggestion -> notYet()
    is Screen.StopAndCall -> notYet()
    is Screen.Signs -> notYet()
    is Screen.Spoke -> notYet()
    is Screen.Entries -> notYet()
    is Screen.Plan -> notYet()
    is Screen.Kept -> notYet()
    is Screen.Keeping -> notYet()
    is Screen.Erase -> notYet()
    is Screen.FirstRun -> notYet()
    is Screen.More -> notYet()
    is Screen.Calendar -> notYet()
    is Screen.Entry -> notYet()
    is Screen.Correct -> notYet()
    is Screen.Questions -> notYet()
    is Screen.Activities -> notYet()
    is Screen.TimeOff -> notYet()
    is Screen.LookForward -> notYet()
    is Screen.Settled -> notYet()
    is Screen.Ending -> notYet()
    is Screen.Shows -> notYet()
    is Screen.Settings -> notYet()
    is Screen.Summary -> notYet()
    is Screen.Practices -> notYet()
    is Screen.AnythingNew -> notYet()
    is Screen.Breathing -> notYet()
    is Screen.Running -> running(screen.v1)
    is Screen.Found -> notYet()
    is Screen.Stopped -> notYet()
    is Screen.Rate -> notYet()
    is Screen.Screening -> notYet()
    is Screen.HoldQuestions -> notYet()
    is Screen.Accept -> notYet()
    is Screen.StepCheck -> notYet()
    is Screen.Reminders -> notYet()
    is Screen.Ready -> notYet()
}

private fun Page.whole(screen: WholeScreen): Unit = when (screen) {
    is WholeScreen.NoDiary -> noDiary(screen.v1)
    is WholeScreen.Code -> code(screen.v1)
    is WholeScreen.SetCode -> notYet()
    is WholeScreen.CannotOpen -> notYet()
    is WholeScreen.Erased -> notYet()
    is WholeScreen.Phrase -> notYet()
    is WholeScreen.PhraseCheck -> notYet()
    is WholeScreen.Copy -> notYet()
    is WholeScreen.Restore -> notYet()
    is WholeScreen.RestoreCopy -> notYet()
    is WholeScreen.Restoring -> notYet()
    is WholeScreen.OpenByPhrase -> notYet()
    is WholeScreen.EraseDays -> notYet()
    is WholeScreen.AddPlan -> notYet()
    is WholeScreen.Done -> notYet()
    is WholeScreen.Sorry -> notYet()
}

/** A record that has no view so far. A test counts these, and there must be none. */
private fun Page.notYet() {
    title("NOT YET")
    val mark = words("NOT YET")
    mark.id = R.id.not_yet
    add(mark)
}
