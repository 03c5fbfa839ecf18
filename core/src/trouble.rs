//! What can go wrong at the door, one variant for each thing a person can do next. Nothing here carries
//! anything she wrote. Stands beside [`crate::companion`], which hands it out, and [`crate::screens`], which says on a
//! screen what can be done, so that neither needs the other for it.

use crate::diary::entry::Although;
use crate::diary::portable::PortableError;
use crate::diary::store::{
    AppendError, BackupError, CreateError, OpenError, ReadError, RenewError, SaveError,
};
use crate::handover::HandOverError;
use crate::ports::{DiskError, KeeperError, RandomError};
use crate::progression::FoldError;
use crate::sealing::OpenError as SealedError;
use crate::words::Words;

/// Why a request was not answered.
#[derive(Clone, Debug, PartialEq, Eq, thiserror::Error)]
pub enum Trouble {
    /// What was asked cannot be done as asked. Nothing was written.
    #[error("what was asked cannot be done as asked")]
    PutRight(Refusal),
    /// No room. Nothing was written; what is there is safe.
    #[error("there is no room on the disk")]
    FreeSpace,
    /// Whether it was kept is not known: close the diary, open it again, and ask again.
    #[error("writing failed; the diary has to be opened again")]
    OpenAgain,
    /// The diary can only be read just now.
    #[error("the diary can only be read just now")]
    ReadOnly,
    /// Another program has it open.
    #[error("the diary is open elsewhere")]
    CloseElsewhere,
    /// A newer program wrote it.
    #[error("the diary was written by a newer version")]
    Update,
    /// The passphrase does not open it.
    #[error("the passphrase does not open the diary")]
    WrongSecret,
    /// The diary opens with a code, and none was given.
    #[error("the code is needed to open the diary")]
    CodeAsked,
    /// The recovery phrase does not open the copy.
    #[error("the recovery phrase does not open the copy")]
    WrongPhrase,
    /// What is needed to open it is damaged or gone: restore a backup.
    #[error("the diary has to be restored from a backup")]
    Restore,
    /// There is no diary in this folder.
    #[error("there is no diary in this folder")]
    NotADiary,
    /// There is a diary in this folder already.
    #[error("there is a diary in this folder already")]
    AlreadyThere,
    /// Try again; nothing was written.
    #[error("it did not work just now")]
    TryAgain,
}

/// Why what was asked cannot be done as asked.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Refusal {
    /// It would lie in the future (T3).
    Future,
    /// There is no such entry.
    NoSuchEntry,
    /// This entry cannot be corrected or left out: a machine wrote it.
    MachineMark,
    /// A correction tells the same kind of thing as what it corrects.
    OtherKind,
    /// The plan has no such step.
    NoSuchStep,
    /// There is no programme yet.
    NoProgramme,
    /// The suggestion has changed since it was shown.
    SuggestionChanged,
    /// No such caution is open.
    NotOpen,
    /// The plan cannot be used; the sentences say why, with the place.
    Plan(Vec<String>),
    /// This revision is in use already.
    RevisionInUse,
    /// This has to be chosen knowingly first.
    Although(Although),
    /// What was handed over cannot be opened.
    HandOver(HandOverError),
    /// The last day lies before the first.
    EndBeforeStart,
    /// A session has 1 to 6 parts of up to a day.
    Parts,
    /// A trainer session tells the size used.
    SizeMissing,
    /// At least one caution is named.
    NoSign,
    /// This caution cannot be reported.
    SignNotAsked,
    /// The number is not one that is offered.
    NumberNotOffered,
    /// It is about a session, and what was named is none.
    NoSession,
    /// It is too long to be kept.
    TooLong,
    /// There is nothing to erase there.
    NothingToErase,
    /// There is no recovery phrase yet, so a copy for elsewhere would open to nobody.
    NoPhrase,
    /// This file is no copy of a diary.
    NotACopy,
    /// The plan has no such practice.
    NoSuchPractice,
    /// This surface has no running time to count with.
    NoRunningTime,
    /// So many questions have no answer yet.
    Unanswered(usize),
    /// There are as many reminders as can be set.
    TooManyReminders,
    /// It cannot be put off: it would come in quiet hours or on another day, or reminders are off.
    NotPutOff,
}

impl Trouble {
    /// What happened and what to do next, in the person's language.
    #[must_use]
    pub fn say(&self, words: &Words) -> String {
        match self {
            Self::PutRight(refusal) => refusal.say(words),
            Self::FreeSpace => words.text("trouble-free-space", &[]),
            Self::OpenAgain => words.text("trouble-open-again", &[]),
            Self::ReadOnly => words.text("trouble-read-only", &[]),
            Self::CloseElsewhere => words.text("trouble-close-elsewhere", &[]),
            Self::Update => words.text("trouble-update", &[]),
            Self::WrongSecret => words.text("trouble-wrong-secret", &[]),
            Self::CodeAsked => words.text("trouble-code-asked", &[]),
            Self::WrongPhrase => words.text("trouble-wrong-phrase", &[]),
            Self::Restore => words.text("trouble-restore", &[]),
            Self::NotADiary => words.text("trouble-not-a-diary", &[]),
            Self::AlreadyThere => words.text("trouble-already-there", &[]),
            Self::TryAgain => words.text("trouble-try-again", &[]),
        }
    }
}

impl Refusal {
    fn say(&self, words: &Words) -> String {
        match self {
            Self::Future => words.text("refusal-future", &[]),
            Self::NoSuchEntry => words.text("refusal-no-such-entry", &[]),
            Self::MachineMark => words.text("refusal-machine-mark", &[]),
            Self::OtherKind => words.text("refusal-other-kind", &[]),
            Self::NoSuchStep => words.text("refusal-no-such-step", &[]),
            Self::NoProgramme => words.text("refusal-no-programme", &[]),
            Self::SuggestionChanged => words.text("refusal-suggestion-changed", &[]),
            Self::NotOpen => words.text("refusal-not-open", &[]),
            Self::Plan(sentences) => {
                words.text("refusal-plan", &[("why", sentences.join("\n").into())])
            }
            Self::RevisionInUse => words.text("refusal-revision-in-use", &[]),
            Self::Although(Although::Unsigned) => words.text("refusal-unsigned", &[]),
            Self::Although(Although::OtherKey) => words.text("refusal-other-key", &[]),
            Self::Although(Although::OlderRevision) => words.text("refusal-older-revision", &[]),
            Self::Although(Although::SameRevision) => words.text("refusal-same-revision", &[]),
            Self::HandOver(error) => error.say(words),
            Self::EndBeforeStart => words.text("refusal-end-before-start", &[]),
            Self::Parts => words.text("refusal-parts", &[]),
            Self::SizeMissing => words.text("refusal-size-missing", &[]),
            Self::NoSign => words.text("refusal-no-sign", &[]),
            Self::SignNotAsked => words.text("refusal-sign-not-asked", &[]),
            Self::NumberNotOffered => words.text("refusal-number-not-offered", &[]),
            Self::NoSession => words.text("refusal-no-session", &[]),
            Self::TooLong => words.text("refusal-too-long", &[]),
            Self::NothingToErase => words.text("refusal-nothing-to-erase", &[]),
            Self::NoPhrase => words.text("refusal-no-phrase", &[]),
            Self::NotACopy => words.text("refusal-not-a-copy", &[]),
            Self::NoSuchPractice => words.text("refusal-no-such-practice", &[]),
            Self::NoRunningTime => words.text("refusal-no-running-time", &[]),
            Self::Unanswered(left) => words.text("screening-left", &[("count", (*left).into())]),
            Self::TooManyReminders => words.text("refusal-too-many-reminders", &[]),
            Self::NotPutOff => words.text("refusal-not-put-off", &[]),
        }
    }
}

impl From<HandOverError> for Refusal {
    fn from(error: HandOverError) -> Self {
        match error {
            HandOverError::Programme(wrong) => {
                Self::Plan(wrong.to_string().lines().map(str::to_owned).collect())
            }
            other => Self::HandOver(other),
        }
    }
}

impl From<DiskError> for Trouble {
    fn from(error: DiskError) -> Self {
        match error {
            DiskError::Full => Self::FreeSpace,
            DiskError::Locked => Self::CloseElsewhere,
            _ => Self::TryAgain,
        }
    }
}

impl From<Refusal> for Trouble {
    fn from(refusal: Refusal) -> Self {
        Self::PutRight(refusal)
    }
}

impl From<AppendError> for Trouble {
    fn from(error: AppendError) -> Self {
        match error {
            AppendError::TooLong => Self::PutRight(Refusal::TooLong),
            AppendError::DiskFull => Self::FreeSpace,
            AppendError::Random(_) => Self::TryAgain,
            AppendError::Poisoned => Self::OpenAgain,
            AppendError::ReadOnly => Self::ReadOnly,
        }
    }
}

impl From<SaveError> for Trouble {
    fn from(error: SaveError) -> Self {
        match error {
            SaveError::ReadOnly => Self::ReadOnly,
            SaveError::DiskFull => Self::FreeSpace,
            SaveError::NoSuchPlace(_) | SaveError::Random(_) | SaveError::Disk(_) => Self::TryAgain,
        }
    }
}

impl From<ReadError> for Trouble {
    fn from(_: ReadError) -> Self {
        Self::OpenAgain
    }
}

impl From<RandomError> for Trouble {
    fn from(_: RandomError) -> Self {
        Self::TryAgain
    }
}

impl From<KeeperError> for Trouble {
    fn from(error: KeeperError) -> Self {
        match error {
            KeeperError::WrongSecret => Self::WrongSecret,
            KeeperError::CodeAsked => Self::CodeAsked,
            KeeperError::Newer => Self::Update,
            KeeperError::WrapDamaged | KeeperError::KeyGone => Self::Restore,
            KeeperError::Refused | KeeperError::TooLittleMemory | KeeperError::Random(_) => {
                Self::TryAgain
            }
        }
    }
}

impl From<OpenError> for Trouble {
    fn from(error: OpenError) -> Self {
        match error {
            OpenError::NotADiary => Self::NotADiary,
            OpenError::InUse => Self::CloseElsewhere,
            OpenError::NewerFormat => Self::Update,
            OpenError::NoWrap => Self::WrongSecret,
            OpenError::Keeper(keeper) => keeper.into(),
            OpenError::KeysDamaged
            | OpenError::KeysMissing
            | OpenError::KeysDoNotFit
            | OpenError::JournalMissing
            | OpenError::HeaderDamaged => Self::Restore,
            OpenError::Disk(_) => Self::TryAgain,
        }
    }
}

impl From<CreateError> for Trouble {
    fn from(error: CreateError) -> Self {
        match error {
            CreateError::AlreadyThere => Self::AlreadyThere,
            CreateError::InUse => Self::CloseElsewhere,
            CreateError::DiskFull => Self::FreeSpace,
            CreateError::Keeper(keeper) => keeper.into(),
            CreateError::WrapTooLong => Self::Update,
            CreateError::Random(_) | CreateError::Disk(_) => Self::TryAgain,
        }
    }
}

impl From<RenewError> for Trouble {
    fn from(error: RenewError) -> Self {
        match error {
            RenewError::NotNow => Self::ReadOnly,
            RenewError::InUse => Self::CloseElsewhere,
            RenewError::DiskFull => Self::FreeSpace,
            RenewError::Keeper(keeper) => keeper.into(),
            RenewError::WrapTooLong => Self::Update,
            RenewError::OpenAgain => Self::OpenAgain,
            RenewError::Random(_) | RenewError::Disk(_) => Self::TryAgain,
        }
    }
}

impl From<BackupError> for Trouble {
    fn from(error: BackupError) -> Self {
        match error {
            BackupError::NotNow => Self::ReadOnly,
            BackupError::Damaged => Self::OpenAgain,
            BackupError::DiskFull => Self::FreeSpace,
            BackupError::Random(_) | BackupError::Disk(_) => Self::TryAgain,
        }
    }
}

impl From<SealedError> for Trouble {
    fn from(error: SealedError) -> Self {
        match error {
            SealedError::WrongKey | SealedError::WrongPassphrase => Self::WrongPhrase,
            SealedError::Newer => Self::Update,
            SealedError::Read(_) => Self::TryAgain,
            SealedError::NotAge
            | SealedError::NeedsPassphrase
            | SealedError::NeedsKey
            | SealedError::Damaged
            | SealedError::TooMuchWork
            | SealedError::TooLarge => Refusal::NotACopy.into(),
        }
    }
}

impl From<PortableError> for Trouble {
    fn from(error: PortableError) -> Self {
        match error {
            PortableError::NotACopy => Refusal::NotACopy.into(),
            PortableError::Newer => Self::Update,
        }
    }
}

impl From<FoldError> for Trouble {
    fn from(_: FoldError) -> Self {
        // A stored plan this program cannot read was accepted by a newer one.
        Self::Update
    }
}
