package frond.home.screens

import frond.core.Screen
import frond.core.View
import frond.core.WholeScreen

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
    is Screen.Entries -> entries(screen.v1)
    is Screen.Plan -> plan(screen.v1)
    is Screen.Kept -> kept(screen.v1)
    is Screen.Keeping -> keeping(screen.v1)
    is Screen.Erase -> erase(screen.v1)
    is Screen.FirstRun -> firstRun(screen.v1)
    is Screen.More -> more(screen.v1)
    is Screen.Calendar -> calendar(screen.v1)
    is Screen.Entry -> entry(screen.v1)
    is Screen.Correct -> correct(screen.v1)
    is Screen.Questions -> questions(screen.v1)
    is Screen.Activities -> activities(screen.v1)
    is Screen.TimeOff -> timeOff(screen.v1)
    is Screen.LookForward -> lookForward(screen.v1)
    is Screen.Settled -> settled(screen.v1)
    is Screen.Ending -> ending(screen.v1)
    is Screen.Shows -> shows(screen.v1)
    is Screen.Settings -> settings(screen.v1)
    is Screen.Summary -> summary(screen.v1)
    is Screen.Practices -> practices(screen.v1)
    is Screen.AnythingNew -> anythingNew(screen.v1)
    is Screen.Breathing -> breathing(screen.v1)
    is Screen.Running -> running(screen.v1)
    is Screen.Found -> found(screen.v1)
    is Screen.Stopped -> stopped(screen.v1)
    is Screen.Rate -> rate(screen.v1)
    is Screen.Screening -> screening(screen.v1)
    is Screen.HoldQuestions -> holdQuestions(screen.v1)
    is Screen.Accept -> accept(screen.v1)
    is Screen.StepCheck -> stepCheck(screen.v1)
    is Screen.Reminders -> reminders(screen.v1)
    is Screen.Ready -> ready(screen.v1)
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
