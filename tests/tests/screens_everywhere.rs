//! Which record of the core is laid out by what, on every surface: the try-out page, Android, iOS. One table, no
//! hole. Each surface's own compiler refuses a record without a page; this test looks at all of them together, also
//! where a compiler for one is not at hand, and prints what it saw.
//!
//! The records come from a list that does not compile unless it names every one of them, each with its type.

use std::fmt::Write;
use std::fs;
use std::path::Path;

use frond_core::screens::*;

/// A record: its name and its type.
type Record = (&'static str, &'static str);

/// Every record of an enum; a match over it, so that the list is neither shorter nor longer than the enum.
macro_rules! every {
    ($screen:ident: $($name:ident($record:ident),)*) => {
        #[allow(non_snake_case, reason = "named as the enum it lists")]
        mod $screen {
            pub(super) const NAMES: &[super::Record] =
                &[$((stringify!($name), stringify!($record)),)*];

            #[allow(dead_code, reason = "that it compiles is the check")]
            fn is_listed(screen: &frond_core::screens::$screen) {
                match screen {
                    $(frond_core::screens::$screen::$name(record) => {
                        let _: &super::$record = record;
                    })*
                }
            }
        }
    };
}

every!(Screen:
    Today(TodayScreen),
    LogSession(LogSessionScreen),
    Ladder(LadderScreen),
    Suggestion(SuggestionScreen),
    StopAndCall(StopScreen),
    Signs(SignsScreen),
    Spoke(SpokeScreen),
    Entries(EntriesScreen),
    Plan(PlanScreen),
    Kept(KeptScreen),
    Keeping(KeepingScreen),
    Erase(EraseScreen),
    FirstRun(FirstRunScreen),
    More(MoreScreen),
    Calendar(CalendarScreen),
    Entry(EntryScreen),
    Correct(CorrectScreen),
    Questions(QuestionsScreen),
    Activities(ActivitiesScreen),
    TimeOff(TimeOffScreen),
    Ready(ReadyScreen),
    LookForward(LookForwardScreen),
    Settled(SettledScreen),
    Ending(EndingScreen),
    Shows(ShowsScreen),
    Settings(SettingsScreen),
    Summary(SummaryFormScreen),
    Practices(PracticesScreen),
    AnythingNew(AnythingNewScreen),
    Breathing(BreathingScreen),
    Running(RunningScreen),
    Found(FoundScreen),
    Stopped(StoppedScreen),
    Rate(RateScreen),
    Screening(ScreeningScreen),
    HoldQuestions(HoldQuestionsScreen),
    Accept(AcceptScreen),
    StepCheck(StepCheckScreen),
    Reminders(RemindersScreen),
);

every!(WholeScreen:
    NoDiary(NoDiaryScreen),
    Code(CodeScreen),
    SetCode(SetCodeScreen),
    CannotOpen(CannotOpenScreen),
    Erased(ErasedScreen),
    Phrase(PhraseScreen),
    PhraseCheck(PhraseCheckScreen),
    Copy(CopyScreen),
    Restore(RestoreChoiceScreen),
    RestoreCopy(RestoreCopyScreen),
    Restoring(RestoreScreen),
    OpenByPhrase(OpenByPhraseScreen),
    EraseDays(EraseDaysScreen),
    AddPlan(AddPlanScreen),
    Done(DoneScreen),
    Sorry(SorryScreen),
);

/// Where a surface says which record is laid out by what.
struct Surface {
    name: &'static str,
    file: &'static str,
    /// How the part begins that is about the open diary, and the one about the diary as a whole.
    begins: [&'static str; 2],
    /// How the arm of this record begins, up to what lays it out.
    arm: fn(of: &str, record: &str) -> String,
    /// What would lay out whatever has no arm of its own.
    any: &'static str,
}

const SURFACES: &[Surface] = &[
    Surface {
        name: "try-out page",
        file: "bindings/desk/src/pages/try_out/show.rs",
        begins: ["    pub(super) fn screen(", "    fn whole_screen("],
        arm: |of, record| format!(" {of}::{record}(screen) =>"),
        any: " _ =>",
    },
    Surface {
        name: "Android",
        file: "android-shell/src/main/kotlin/frond/home/screens/Show.kt",
        begins: ["private fun Page.screen(", "private fun Page.whole("],
        arm: |of, record| format!(" is {of}.{record} ->"),
        any: " else ->",
    },
    Surface {
        name: "iOS",
        file: "ios-shell/App/Screens/Show.swift",
        begins: ["private struct ShowScreen", "private struct ShowWhole"],
        arm: |_, record| {
            let (first, rest) = record.split_at(1);
            format!(" case .{}{rest}(let screen):", first.to_lowercase())
        },
        any: " default:",
    },
];

/// The part of a file that begins so, up to the next line that is indented no deeper than its first.
fn part<'a>(text: &'a str, begins: &str) -> Option<&'a str> {
    let at = text.find(begins)?;
    let deep = begins.len() - begins.trim_start().len();
    let from = &text[at..];
    let mut end = from.find('\n')? + 1;
    for line in from[end..].split_inclusive('\n') {
        end += line.len();
        let own = line.len() - line.trim_start().len();
        if !line.trim().is_empty() && own <= deep {
            break;
        }
    }
    Some(&from[..end])
}

/// What lays out a record: the last name called before the record is handed over.
fn laid_out_by(part: &str, arm: &str) -> Option<String> {
    let line = part.replace('\n', " ");
    let (_, after) = line.split_once(arm)?;
    // Up to the next arm of any surface.
    let ends = ["Screen::", " is ", " case "];
    let end = ends.iter().filter_map(|own| after.find(own)).min().unwrap_or(after.len());
    let own = |letter: char| letter.is_alphanumeric() || letter == ':' || letter == '_';
    after[..end]
        .match_indices('(')
        .filter(|(at, _)| after[*at..end].contains("screen"))
        .filter_map(|(at, _)| {
            let name = after[..at].rsplit(|letter| !own(letter)).next()?;
            (!name.is_empty() && name != "vec").then(|| name.to_owned())
        })
        .next_back()
}

/// One line for each record; what is missing or too much.
fn table(of: &str, records: &[Record], texts: &[(&Surface, &str)]) -> (String, Vec<String>) {
    let (mut table, mut wrong) = (String::new(), Vec::new());
    let which = usize::from(of == "WholeScreen");
    let parts: Vec<(&Surface, &str)> = texts
        .iter()
        .map(|(surface, text)| match part(text, surface.begins[which]) {
            Some(part) => (*surface, part),
            None => {
                wrong.push(format!("{}: nothing is said of {of}", surface.name));
                (*surface, "")
            }
        })
        .collect();
    for (surface, part) in &parts {
        let spaced = part.replace('\n', " ");
        if spaced.contains(surface.any) {
            wrong.push(format!(
                "{}: {of}: one arm takes whatever has none of its own",
                surface.name
            ));
        }
    }
    for (record, kind) in records {
        let mut line = format!("{kind:<21}");
        for (surface, part) in &parts {
            let by = laid_out_by(part, &(surface.arm)(of, record));
            if by.is_none() {
                wrong.push(format!("{}: {of}: {record} is laid out by nothing", surface.name));
            }
            let _ = write!(line, " {:<29}", by.as_deref().unwrap_or("-"));
        }
        let _ = writeln!(table, "{}", line.trim_end());
    }
    (table, wrong)
}

fn all(texts: &[(&Surface, &str)]) -> (String, Vec<String>) {
    let mut shown = format!("{:<21}", "core");
    for (surface, _) in texts {
        let _ = write!(shown, " {:<29}", surface.name);
    }
    let mut shown = format!("{}\n", shown.trim_end());
    let mut wrong = Vec::new();
    for (of, records) in [("Screen", Screen::NAMES), ("WholeScreen", WholeScreen::NAMES)] {
        let (lines, missing) = table(of, records, texts);
        let _ = write!(shown, "\n{of}\n{lines}");
        wrong.extend(missing);
    }
    (shown, wrong)
}

fn read(path: &str) -> String {
    let root = Path::new(env!("CARGO_MANIFEST_DIR")).join("..");
    fs::read_to_string(root.join(path)).unwrap_or_else(|error| panic!("{path}: {error}"))
}

#[test]
fn every_record_is_laid_out_on_every_surface() {
    let texts: Vec<String> = SURFACES.iter().map(|surface| read(surface.file)).collect();
    let texts: Vec<(&Surface, &str)> =
        SURFACES.iter().zip(texts.iter().map(String::as_str)).collect();
    let (shown, wrong) = all(&texts);
    println!("{shown}");
    assert_eq!(wrong, Vec::<String>::new());
    insta::with_settings!({ omit_expression => true }, {
        insta::assert_snapshot!("screens_everywhere", shown);
    });
}

#[test]
fn a_planted_hole_is_noticed_on_each_surface() {
    for surface in SURFACES {
        let text = read(surface.file);
        for (of, records) in [("Screen", Screen::NAMES), ("WholeScreen", WholeScreen::NAMES)] {
            for (record, _) in records {
                let arm = (surface.arm)(of, record);
                let hole = text.replacen(
                    &arm,
                    &arm.replace(record, "Other").replace("case .", "case .other"),
                    1,
                );
                assert_ne!(hole, text, "{}: {arm}", surface.name);
                let (shown, wrong) = all(&[(surface, &hole)]);
                assert_eq!(wrong.len(), 1, "{}: {of}: {record}: {wrong:?}", surface.name);
                assert!(wrong[0].contains(record), "{wrong:?}");
                assert_eq!(shown.lines().filter(|line| line.ends_with(" -")).count(), 1);
            }
        }
    }
}

#[test]
fn an_arm_for_whatever_is_left_is_noticed() {
    for surface in SURFACES {
        let text = read(surface.file);
        for (at, of) in ["Screen", "WholeScreen"].into_iter().enumerate() {
            let first = if at == 0 { Screen::NAMES[0].0 } else { WholeScreen::NAMES[0].0 };
            let arm = (surface.arm)(of, first);
            let lazy = text.replacen(&arm, &format!("{} nothing(){arm}", surface.any), 1);
            let (_, wrong) = all(&[(surface, &lazy)]);
            assert_eq!(wrong.len(), 1, "{}: {wrong:?}", surface.name);
            assert!(wrong[0].contains("whatever"), "{wrong:?}");
        }
        let (_, wrong) = all(&[(surface, "")]);
        assert!(wrong.iter().any(|own| own.contains("nothing is said")));
    }
}

/// Whether a view is there and takes this record. What compiles Kotlin and Rust says so by itself; the views of the
/// iPhone app need a Mac.
fn takes(views: &str, view: &str, kind: &str) -> bool {
    let declared = format!("struct {view}: View {{");
    part(views, &declared).is_some_and(|own| own.contains(&format!("    let screen: {kind}\n")))
}

#[test]
fn each_view_of_the_iphone_app_is_there_and_takes_its_record() {
    let surface = SURFACES.last().unwrap();
    let folder = Path::new(env!("CARGO_MANIFEST_DIR")).join("../ios-shell/App/Screens");
    let views: String = fs::read_dir(folder)
        .unwrap()
        .map(|file| fs::read_to_string(file.unwrap().path()).unwrap())
        .collect();
    let text = read(surface.file);
    for (at, records) in [Screen::NAMES, WholeScreen::NAMES].into_iter().enumerate() {
        let own = part(&text, surface.begins[at]).unwrap();
        let of = ["Screen", "WholeScreen"][at];
        for (record, kind) in records {
            let view = laid_out_by(own, &(surface.arm)(of, record)).unwrap();
            assert!(takes(&views, &view, kind), "{view} takes no {kind}");
            assert!(!takes(&views, &view, "AnotherScreen"));
            let gone = views.replace(&format!("struct {view}: View"), "struct Gone: View");
            assert!(!takes(&gone, &view, kind));
        }
    }
}
