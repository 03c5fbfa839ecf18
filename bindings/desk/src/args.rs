//! What can be typed. A person who only keeps a diary needs `start`, `today`, `log`, `suggest` and
//! `sign`; a clinician needs `check`, `suggest` and `replay`.

mod hand_over;
mod keep;
mod log;
mod show;
mod tell;

use std::path::PathBuf;

use clap::{ArgGroup, Args as ClapArgs, Parser, Subcommand, ValueEnum};
use frond_core::moment::Stamp;
use frond_core::programme::values::{Line, Passage, StepId};
use frond_core::safety::Sign;
use frond_core::summary::Pin;

pub(crate) use hand_over::{AgreeArgs, AlthoughArg, HandOverArgs};
pub(crate) use keep::{CopyArgs, EraseArgs, PassphraseArgs, PhraseArgs, RestoreArgs, SummaryArgs};
pub(crate) use log::{LogArgs, seconds as minutes, size};
pub(crate) use show::{ShowScreenArgs, What};
pub(crate) use tell::{AnythingNewArg, CautionsArgs, Tell};

use crate::place::DiaryArgs;
use crate::when::When;

/// Frond, on the command line
///
/// A home programme in pelvic-health physical therapy, kept in private: what the clinician wrote, what was
/// done, and what the clinician's own rule says next. Frond has no dose or threshold of its own and sends
/// nothing anywhere.
///
/// What is typed behind a command other programs of this computer can see while it runs, and a shell keeps it in its
/// history. Cautions, ratings, notes and questions can be left out; they are then asked on the terminal.
///
/// Exit codes: 0 fine; 2 what was given has to be put right, and nothing was written; 1 anything else.
#[derive(Parser)]
#[command(name = "frond", version, disable_help_subcommand = true, max_term_width = 80)]
pub(crate) struct Args {
    #[command(subcommand)]
    pub(crate) command: Command,
}

/// The commands.
#[derive(Subcommand)]
pub(crate) enum Command {
    /// Ten weeks of an invented person, told from beginning to end
    Demo(DemoArgs),
    /// The patient's screens as pages on this computer, to try them out
    Try(TryArgs),
    /// Your desk as pages on this computer: write a programme, hand it over, read what comes back
    Desk(DeskArgs),
    /// Check a programme: errors with their place, warnings with their ground
    Check(CheckArgs),
    /// What the clinician's rule says next, and why
    Suggest(SuggestArgs),
    /// What the rule said at each entry, and what another rule would have said
    Replay(ReplayArgs),
    /// Make a summary for the clinician: see what is in it, seal it, write it to a file
    Summary(SummaryArgs),
    /// Read a summary that somebody handed over
    Read(ReadArgs),
    /// A letter for the clinician who referred somebody, or the person's own copy of it, from a summary
    Letter(LetterArgs),
    /// Many summaries as lines for a database: one file for sessions, steps, weeks, signs and diaries
    Gather(GatherArgs),
    /// Start a new diary
    Start(StartArgs),
    /// Sign a programme and hand it over: a file, or a QR code
    HandOver(HandOverArgs),
    /// Accept a programme, or a new revision of it
    Accept(AcceptArgs),
    /// What today asks
    Today(ShowArgs),
    /// Write down a session
    Log(LogArgs),
    /// The steps: see them, confirm the present one, use another
    Step(StepArgs),
    /// Something is not right: see the cautions, report one
    Sign(SignArgs),
    /// Stop and call: whom, and what to say
    Call(ShowArgs),
    /// "I spoke with ...": see what is open, write down a talk
    Spoke(SpokeArgs),
    /// What was written; leave an entry out
    Entries(EntriesArgs),
    /// The plan in plain sentences
    Plan(ShowArgs),
    /// Write down anything else: time off, a question for the visit, an answer
    Tell(TellArgs),
    /// Look at another screen: the calendar, one entry, questions for the visit, settings and more
    Show(ShowScreenArgs),
    /// How the diary is kept: what opens it, what copies there are, what was damaged
    Keeping(ShowArgs),
    /// Make a recovery phrase: twelve words that open the diary too
    Phrase(PhraseArgs),
    /// Change the passphrase
    Passphrase(PassphraseArgs),
    /// Make a copy on this device now; one is made by itself each day you write
    Backup(ShowArgs),
    /// Make a copy to keep elsewhere, sealed to the recovery phrase
    Copy(CopyArgs),
    /// Look into a copy, restore it
    Restore(RestoreArgs),
    /// Erase an entry, some days or everything, for good
    Erase(EraseArgs),
}

#[derive(ClapArgs)]
pub(crate) struct DemoArgs {
    /// A new or empty folder for what it makes
    #[arg(long, value_name = "FOLDER")]
    pub(crate) out: PathBuf,
}

/// The patient's screens in a browser, with the real diary behind them. Only this computer can reach the
/// pages, and only with the address that is printed; it works once.
///
/// Without --diary, a temporary diary filled like `frond demo`, as of the evening after its last entry; it is
/// removed at the end. Stop with Ctrl-C.
#[derive(ClapArgs)]
pub(crate) struct TryArgs {
    /// A diary of your own: opened, or started where the folder is empty
    #[arg(long, value_name = "FOLDER", conflicts_with = "empty")]
    pub(crate) diary: Option<PathBuf>,
    #[command(flatten)]
    pub(crate) secret: crate::secret::SecretArgs,
    /// A programme, to be read and accepted on the page
    #[arg(long, value_name = "FILE")]
    pub(crate) programme: Option<PathBuf>,
    /// A temporary diary with nothing in it
    #[arg(long)]
    pub(crate) empty: bool,
    /// Pretend that it is this time, such as 2026-05-10T19:30:00+01:00; it runs on from there
    #[arg(long, value_name = "TIME")]
    pub(crate) now: Option<Stamp>,
    /// The language of the screens where the diary names none, such as en
    #[arg(long, value_name = "TAG")]
    pub(crate) language: Option<String>,
    /// Do not open a browser; the address is printed either way
    #[arg(long)]
    pub(crate) no_open: bool,
    /// Listen on this port
    #[arg(long, value_name = "PORT", hide = true)]
    pub(crate) port: Option<u16>,
}

/// The clinician's side in a browser: keys, plans, summaries that came back. Only this computer can reach the
/// pages, and only with the address that is printed; it works once.
///
/// Everything lies sealed in one folder. At first use Frond makes keys under a passphrase. Stop with Ctrl-C.
#[derive(ClapArgs)]
pub(crate) struct DeskArgs {
    /// The desk's folder; usually ~/.local/share/frond-desk
    #[arg(long, env = "FROND_DESK", hide_env_values = true, value_name = "FOLDER")]
    pub(crate) folder: Option<PathBuf>,
    /// For trying out: pretend that it is this time, such as 2026-05-10T19:30:00+01:00
    #[arg(long, hide = true, value_name = "TIME")]
    pub(crate) now: Option<Stamp>,
    /// The language of the pages, such as en
    #[arg(long, value_name = "TAG")]
    pub(crate) language: Option<String>,
    /// Do not open a browser; the address is printed either way
    #[arg(long)]
    pub(crate) no_open: bool,
    /// Listen on this port
    #[arg(long, value_name = "PORT", hide = true)]
    pub(crate) port: Option<u16>,
}

#[derive(ClapArgs)]
pub(crate) struct CheckArgs {
    /// The programme, a JSON file
    pub(crate) file: PathBuf,
    /// Say the plan back in plain sentences
    #[arg(long)]
    pub(crate) read_back: bool,
    /// Print JSON, for a program to read
    #[arg(long)]
    pub(crate) json: bool,
}

/// Of a file of entries, or of a diary. On a diary the choice can be written down too.
#[derive(ClapArgs)]
#[command(group = ArgGroup::new("choice").multiple(false))]
pub(crate) struct SuggestArgs {
    /// A diary as JSON lines, one entry a line
    #[arg(long, value_name = "FILE", requires = "at", conflicts_with = "choice")]
    pub(crate) entries: Option<PathBuf>,
    /// The time to ask for, such as 2026-05-10T19:30:00+01:00
    #[arg(long = "now", id = "at", value_name = "TIME")]
    pub(crate) now: Option<Stamp>,
    /// The programme, where no line of --entries accepts one
    #[arg(long, value_name = "FILE", requires = "entries")]
    pub(crate) programme: Option<PathBuf>,
    /// The folder of the diary
    #[arg(long, env = "FROND_DIARY", hide_env_values = true, value_name = "FOLDER")]
    pub(crate) diary: Option<PathBuf>,
    #[command(flatten)]
    pub(crate) secret: crate::secret::SecretArgs,
    /// Try what is suggested
    #[arg(long = "try", group = "choice")]
    pub(crate) try_it: bool,
    /// Stay where you are
    #[arg(long, group = "choice")]
    pub(crate) stay: bool,
    /// Stay here for now, or no longer
    #[arg(long, value_name = "ANSWER", group = "choice")]
    pub(crate) stay_here: Option<YesNo>,
    /// Would you like to try the next step?
    #[arg(long, value_name = "ANSWER", group = "choice")]
    pub(crate) ready: Option<Ready>,
    /// Print JSON, for a program to read
    #[arg(long)]
    pub(crate) json: bool,
}

#[derive(Clone, Copy, ValueEnum)]
pub(crate) enum YesNo {
    Yes,
    No,
}

#[derive(Clone, Copy, ValueEnum)]
pub(crate) enum Ready {
    Yes,
    NotYet,
    RatherNotSay,
}

#[derive(ClapArgs)]
pub(crate) struct ReplayArgs {
    /// A diary as JSON lines, one entry a line
    #[arg(long, value_name = "FILE")]
    pub(crate) entries: PathBuf,
    /// The programme, where no line of --entries accepts one
    #[arg(long, value_name = "FILE")]
    pub(crate) programme: Option<PathBuf>,
    /// Another rule to put beside: a rule, or a programme whose rule is taken
    #[arg(long, value_name = "FILE")]
    pub(crate) rule: Option<PathBuf>,
    /// Stop before entries written after this time
    #[arg(long, value_name = "TIME")]
    pub(crate) now: Option<Stamp>,
    /// Print JSON, for a program to read
    #[arg(long)]
    pub(crate) json: bool,
}

#[derive(ClapArgs)]
pub(crate) struct ReadArgs {
    /// The summary, sealed or open
    pub(crate) file: PathBuf,
    #[command(flatten)]
    pub(crate) open: OpenArgs,
    /// The mark of the diary it should come from, as an earlier reading shows it
    #[arg(long, value_name = "MARK")]
    pub(crate) pin: Option<Pin>,
    /// Unfold the notes
    #[arg(long)]
    pub(crate) notes: bool,
    /// Also write it as a FHIR R4 bundle, for the programs of clinics, to this new file. The wish for time
    /// alone is never in it
    #[arg(long, value_name = "FILE")]
    pub(crate) fhir: Option<PathBuf>,
    /// A closer look at the numbers instead: counts, medians, limits, direction, and what each can bear
    #[arg(long, conflicts_with = "notes")]
    pub(crate) insight: bool,
    /// Print JSON, for a program to read
    #[arg(long)]
    pub(crate) json: bool,
}

/// What opens a sealed summary.
#[derive(ClapArgs)]
pub(crate) struct OpenArgs {
    /// It is sealed to a passphrase: read that from the first line of this file
    #[arg(long, value_name = "FILE", conflicts_with = "identity_file")]
    pub(crate) passphrase_file: Option<PathBuf>,
    /// It is sealed to a key: the age identity file
    #[arg(long, value_name = "FILE")]
    pub(crate) identity_file: Option<PathBuf>,
}

/// Who it is about, to whom it goes and what is asked stands in a file that you write: JSON with `person`, `to`,
/// `from`, `date`, `request` and, where wanted, `known_by`, `reached_at`, `view` and `next`. No note, question or
/// wish of the person is ever in a letter.
#[derive(ClapArgs)]
pub(crate) struct LetterArgs {
    /// The summary, sealed or open
    pub(crate) file: PathBuf,
    #[command(flatten)]
    pub(crate) open: OpenArgs,
    /// What you write for this letter, a JSON file
    #[arg(long, value_name = "FILE")]
    pub(crate) typed: PathBuf,
    /// The person agreed to this letter; without it none is made
    #[arg(long)]
    pub(crate) person_agreed: bool,
    /// The person's own copy, in plain words
    #[arg(long)]
    pub(crate) copy: bool,
    /// The language of the letter, such as en
    #[arg(long, value_name = "TAG")]
    pub(crate) language: Option<String>,
    /// A new file to write it to, a PDF
    #[arg(long, value_name = "FILE")]
    pub(crate) out: PathBuf,
    /// Print the letter as JSON too, for a program to read
    #[arg(long)]
    pub(crate) json: bool,
}

/// The newest summary of each diary counts. Nobody is named in what is written: a diary is known by its own
/// random id. What each column means stands in columns.json beside the lines, and the questions of a clinic in
/// clinic.sql, for DuckDB and Apache Spark.
#[derive(ClapArgs)]
pub(crate) struct GatherArgs {
    /// The folder of summaries, sealed or open
    pub(crate) folder: PathBuf,
    /// The folder is that of a desk: its own passphrase opens the summaries in it. Close the desk first
    #[arg(long, conflicts_with = "identity_file")]
    pub(crate) desk: bool,
    #[command(flatten)]
    pub(crate) open: OpenArgs,
    /// A new or empty folder for what it writes
    #[arg(long, value_name = "FOLDER")]
    pub(crate) out: PathBuf,
    /// FHIR R4 resources too, one a line
    #[arg(long)]
    pub(crate) fhir: bool,
    /// With the words that people wrote: notes, questions, names of goals and activities
    #[arg(long)]
    pub(crate) with_texts: bool,
    /// With the nickname that each plan was made out to
    #[arg(long)]
    pub(crate) with_nicknames: bool,
}

#[derive(ClapArgs)]
pub(crate) struct StartArgs {
    #[command(flatten)]
    pub(crate) diary: DiaryArgs,
    /// A programme to begin with
    #[arg(long, value_name = "FILE")]
    pub(crate) programme: Option<PathBuf>,
    #[command(flatten)]
    pub(crate) agree: AgreeArgs,
}

/// As a file, or as the link of a QR code.
#[derive(ClapArgs)]
pub(crate) struct AcceptArgs {
    #[command(flatten)]
    pub(crate) diary: DiaryArgs,
    /// The programme, signed or plain, or a file with its link
    #[arg(required_unless_present = "link")]
    pub(crate) file: Option<PathBuf>,
    /// Its link, which begins with FROND:
    #[arg(long, value_name = "LINK", conflicts_with = "file")]
    pub(crate) link: Option<String>,
    #[command(flatten)]
    pub(crate) agree: AgreeArgs,
}

#[derive(ClapArgs)]
pub(crate) struct ShowArgs {
    #[command(flatten)]
    pub(crate) diary: DiaryArgs,
    /// Print JSON, for a program to read
    #[arg(long)]
    pub(crate) json: bool,
}

#[derive(ClapArgs)]
pub(crate) struct StepArgs {
    #[command(flatten)]
    pub(crate) diary: DiaryArgs,
    /// Use this step from now on
    #[arg(long, value_name = "ID", value_parser = step_id, conflicts_with = "confirm")]
    pub(crate) to: Option<StepId>,
    /// A step beyond the present one: I have read the caution, and it is my own choice
    #[arg(long, requires = "to")]
    pub(crate) own_choice: bool,
    /// My clinician said so
    #[arg(long, requires = "to", conflicts_with = "own_choice")]
    pub(crate) clinician_said: bool,
    /// The present step is what I use now
    #[arg(long)]
    pub(crate) confirm: bool,
    /// Print JSON, for a program to read
    #[arg(long)]
    pub(crate) json: bool,
}

#[derive(ClapArgs)]
pub(crate) struct SignArgs {
    #[command(flatten)]
    pub(crate) diary: DiaryArgs,
    /// What is not right, by the word in the list; may be given again
    #[arg(long, value_name = "CODE", value_parser = sign)]
    pub(crate) sign: Vec<Sign>,
    /// In your own words (the shell may keep what is typed here in its history)
    #[arg(long, value_name = "TEXT", value_parser = passage, requires = "sign")]
    pub(crate) note: Option<Passage>,
    /// When it was, if not now
    #[arg(long, value_name = "TIME", requires = "sign")]
    pub(crate) happened: Option<When>,
    /// Print JSON, for a program to read
    #[arg(long)]
    pub(crate) json: bool,
}

#[derive(ClapArgs)]
pub(crate) struct SpokeArgs {
    #[command(flatten)]
    pub(crate) diary: DiaryArgs,
    /// With whom
    #[arg(long, value_name = "NAME", value_parser = line)]
    pub(crate) with: Option<Line>,
    /// When, if not now: a day, or a day and a time
    #[arg(long, value_name = "TIME", requires = "with")]
    pub(crate) on: Option<When>,
    /// An open caution that the talk closes, as the list writes it; may be given again
    #[arg(long, value_name = "ENTRY:CODE", requires = "with", value_parser = sign_key)]
    pub(crate) sign: Vec<frond_core::diary::entry::SignKey>,
    /// The talk closes every open caution
    #[arg(long, requires = "with", conflicts_with = "sign")]
    pub(crate) all_signs: bool,
    /// The person said that I may go on: this closes the pause
    #[arg(long, requires = "with")]
    pub(crate) go_on: bool,
    /// Print JSON, for a program to read
    #[arg(long)]
    pub(crate) json: bool,
}

#[derive(ClapArgs)]
pub(crate) struct EntriesArgs {
    #[command(flatten)]
    pub(crate) diary: DiaryArgs,
    /// Leave this entry out from now on (the beginning of its id is enough)
    #[arg(long, value_name = "ID")]
    pub(crate) strike: Option<String>,
    /// Print every entry as JSON lines, the form that `suggest --entries` and `replay` read
    #[arg(long, conflicts_with_all = ["strike", "json"])]
    pub(crate) export: bool,
    /// Print JSON, for a program to read
    #[arg(long)]
    pub(crate) json: bool,
}

#[derive(ClapArgs)]
pub(crate) struct TellArgs {
    #[command(subcommand)]
    pub(crate) what: Tell,
}

pub(crate) fn line(text: &str) -> Result<Line, String> {
    Line::new(text).map_err(|error| error.to_string())
}

pub(crate) fn passage(text: &str) -> Result<Passage, String> {
    Passage::new(text).map_err(|error| error.to_string())
}

pub(crate) fn sign(text: &str) -> Result<Sign, String> {
    let sign: Option<Sign> = serde_json::from_value(text.replace('-', "_").into()).ok();
    sign.filter(|sign| sign.can_be_asked())
        .ok_or_else(|| "there is no such caution; `frond sign` lists them".to_owned())
}

fn step_id(text: &str) -> Result<StepId, String> {
    StepId::new(text).map_err(|error| error.to_string())
}

fn sign_key(text: &str) -> Result<frond_core::diary::entry::SignKey, String> {
    let (entry, code) = text
        .split_once(':')
        .ok_or_else(|| "write ENTRY:CODE, as `frond spoke` lists it".to_owned())?;
    let entry = entry
        .parse()
        .map_err(|error: frond_core::programme::values::ValueError| error.to_string())?;
    Ok(frond_core::diary::entry::SignKey { entry, sign: sign(code)? })
}
