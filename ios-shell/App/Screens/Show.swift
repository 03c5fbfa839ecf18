// Which record is laid out by which view: every one there is, and no other. A new record of the core does not compile here
// before it has a view.
import FrondHome
import SwiftUI

struct Show: View {
    let view: FrondCore.View

    var body: some View {
        switch view {
        case .screen(let screen): ShowScreen(screen: screen)
        case .whole(let screen): ShowWhole(screen: screen)
        }
    }
}

private struct ShowScreen: View {
    let screen: Screen

    var body: some View {
        switch screen {
        case .today(let screen): TodayView(screen: screen)
        case .logSession(let screen): LogSessionView(screen: screen)
        case .ladder(let screen): LadderView(screen: screen)
        case .suggestion(let screen): SuggestionView(screen: screen)
        case .stopAndCall(let screen): StopView(screen: screen)
        case .signs(let screen): SignsView(screen: screen)
        case .spoke(let screen): SpokeView(screen: screen)
        case .entries(let screen): EntriesView(screen: screen)
        case .plan(let screen): PlanView(screen: screen)
        case .kept(let screen): KeptView(screen: screen)
        case .keeping(let screen): KeepingView(screen: screen)
        case .erase(let screen): EraseView(screen: screen)
        case .firstRun(let screen): FirstRunView(screen: screen)
        case .more(let screen): MoreView(screen: screen)
        case .calendar(let screen): CalendarView(screen: screen)
        case .entry(let screen): EntryView(screen: screen)
        case .correct(let screen): CorrectView(screen: screen)
        case .questions(let screen): QuestionsView(screen: screen)
        case .activities(let screen): ActivitiesView(screen: screen)
        case .timeOff(let screen): TimeOffView(screen: screen)
        case .ready(let screen): ReadyView(screen: screen)
        case .lookForward(let screen): LookForwardView(screen: screen)
        case .settled(let screen): SettledView(screen: screen)
        case .ending(let screen): EndingView(screen: screen)
        case .shows(let screen): ShowsView(screen: screen)
        case .settings(let screen): SettingsView(screen: screen)
        case .summary(let screen): SummaryFormView(screen: screen)
        case .practices(let screen): PracticesView(screen: screen)
        case .anythingNew(let screen): AnythingNewView(screen: screen)
        case .breathing(let screen): BreathingView(screen: screen)
        case .running(let screen): RunningView(screen: screen)
        case .found(let screen): FoundView(screen: screen)
        case .stopped(let screen): StoppedView(screen: screen)
        case .rate(let screen): RateView(screen: screen)
        case .screening(let screen): ScreeningView(screen: screen)
        case .holdQuestions(let screen): HoldQuestionsView(screen: screen)
        case .accept(let screen): AcceptView(screen: screen)
        case .stepCheck(let screen): StepCheckView(screen: screen)
        case .reminders(let screen): RemindersView(screen: screen)
        }
    }
}

private struct ShowWhole: View {
    let screen: WholeScreen

    var body: some View {
        switch screen {
        case .noDiary(let screen): NoDiaryView(screen: screen)
        case .code(let screen): CodeView(screen: screen)
        case .setCode(let screen): SetCodeView(screen: screen)
        case .cannotOpen(let screen): CannotOpenView(screen: screen)
        case .erased(let screen): ErasedView(screen: screen)
        case .phrase(let screen): PhraseView(screen: screen)
        case .phraseCheck(let screen): PhraseCheckView(screen: screen)
        case .copy(let screen): CopyView(screen: screen)
        case .restore(let screen): RestoreChoiceView(screen: screen)
        case .restoreCopy(let screen): RestoreCopyView(screen: screen)
        case .restoring(let screen): RestoreView(screen: screen)
        case .openByPhrase(let screen): OpenByPhraseView(screen: screen)
        case .eraseDays(let screen): EraseDaysView(screen: screen)
        case .addPlan(let screen): AddPlanView(screen: screen)
        case .done(let screen): DoneView(screen: screen)
        case .sorry(let screen): SorryView(screen: screen)
        }
    }
}
