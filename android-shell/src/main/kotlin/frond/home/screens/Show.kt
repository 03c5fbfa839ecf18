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
    is Screen.LogSession -> logSession(screen.v1)
    is Screen.Ladder -> ladder(screen.v1)
    is Screen.Suggestion -> suggestion(screen.v1)
    is Screen.StopAndCall -> stopAndCall(screen.v1)
    is Screen.Signs -> signs(screen.v1)
    is Screen.Spoke -> spoke(screen.v1)
    is Screen.Entries -> notYet(screen.v1.title)
    is Screen.Plan -> notYet(screen.v1.title)
    is Screen.Kept -> kept(screen.v1)
    is Screen.Keeping -> notYet(screen.v1.title)
    is Screen.Erase -> notYet(screen.v1.title)
    is Screen.FirstRun -> firstRun(screen.v1)
    is Screen.More -> notYet(screen.v1.title)
    is Screen.Calendar -> notYet(screen.v1.title)
    is Screen.Entry -> notYet(screen.v1.title)
    is Screen.Correct -> correct(screen.v1)
    is Screen.Questions -> notYet(screen.v1.title)
    is Screen.Activities -> notYet(screen.v1.title)
    is Screen.TimeOff -> notYet(screen.v1.title)
    is Screen.LookForward -> lookForward(screen.v1)
    is Screen.Settled -> settled(screen.v1)
    is Screen.Ending -> notYet(screen.v1.title)
    is Screen.Shows -> notYet(screen.v1.title)
    is Screen.Settings -> notYet(screen.v1.title)
    is Screen.Summary -> notYet(screen.v1.title)
    is Screen.Practices -> practices(screen.v1)
    is Screen.AnythingNew -> anythingNew(screen.v1)
    is Screen.Breathing -> breathing(screen.v1)
    is Screen.Running -> running(screen.v1)
    is Screen.Found -> found(screen.v1)
    is Screen.Stopped -> stopped(screen.v1)
    is Screen.Rate -> rate(screen.v1)
    is Screen.Screening -> screening(screen.v1)
    is Screen.HoldQuestions -> holdQuestions(screen.v1)
    is Screen.Accept -> notYet(screen.v1.title)
    is Screen.StepCheck -> stepCheck(screen.v1)
    is Screen.Reminders -> notYet(screen.v1.title)
    is Screen.Ready -> ready(screen.v1)
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
