//! The form for a session. Nothing is chosen beforehand; a form that has to be put right comes back as it was
//! filled in, under the same id.

use frond_core::companion::{Request, SessionTold, Told};
use frond_core::diary::entry::{Answer, Ended, Ratings, UsedPart};
use frond_core::programme::values::{Passage, Position, Practice, Rating, RatingKind, Size};
use frond_core::screens::{LogSessionScreen, PresentSession, RatingQuestion, Screen};

use super::signs;
use super::visit::{Shown, Visit};
use super::when;
use crate::args;
use crate::pages::form::{Fields, Problem, code, decode};
use crate::pages::parts::{Choice, Field, Form, Kind, Look, Page};

const OTHER_SIZE: &str = "other";
pub(super) const UNSAID: &str = "rather_not_say";

pub(super) fn told(visit: &mut Visit<'_>, fields: &Fields) -> Shown {
    match visit.ask(Request::LogSession)? {
        Screen::LogSession(screen) => write(visit, screen, fields),
        other => visit.screen(&other),
    }
}

/// Writes what the form tells: a new session, or how an earlier one really was.
pub(super) fn write(visit: &mut Visit<'_>, screen: LogSessionScreen, fields: &Fields) -> Shown {
    let screen = LogSessionScreen { id: visit.id_of(fields)?, ..screen };
    let problems = match read(visit, &screen, fields) {
        Ok((session, happened)) => {
            let told = match &screen.current {
                None => Told::Session(session),
                Some(current) => {
                    let told = Box::new(Told::Session(with_the_rest(session, current)));
                    Told::Correct { of: current.of, told }
                }
            };
            match visit.write(screen.id, told, happened)? {
                Ok(kept) => return Ok(kept),
                Err(problem) => vec![problem],
            }
        }
        Err(problems) => problems,
    };
    page(visit, &screen, fields, problems)
}

/// What the form does not ask goes along unchanged: earlier parts, and the signs noted with it.
fn with_the_rest(mut session: SessionTold, current: &PresentSession) -> SessionTold {
    let earlier = current.session.parts.split_last().map_or(&[][..], |(_, earlier)| earlier);
    session.parts.splice(0..0, earlier.iter().copied());
    session.signs.extend(current.session.signs.iter().map(|noted| noted.sign));
    session
}

/// What stands there now, as the form would have sent it.
fn present(current: &PresentSession) -> Fields {
    let session = &current.session;
    let mut all = vec![
        ("practice".to_owned(), code(&session.practice)),
        ("position".to_owned(), code(&session.position)),
        ("ended".to_owned(), code(&session.ended)),
    ];
    let mut add = |name: &str, value: String| all.push((name.to_owned(), value));
    let seconds = session.main_seconds();
    let (whole, tenth) = (seconds / 60, seconds % 60 / 6);
    add("minutes", if tenth == 0 { whole.to_string() } else { format!("{whole}.{tenth}") });
    if let Some(size) = session.main_size() {
        add("size", size.get().to_string());
    }
    for kind in RatingKind::ALL {
        let answer = match kind {
            RatingKind::Peak => session.ratings.peak,
            RatingKind::Before => session.ratings.before,
            RatingKind::After => session.ratings.after,
            RatingKind::Worry => session.ratings.worry,
        };
        match answer {
            Some(Answer::Rated(rating)) => add(name_of(kind), rating.get().to_string()),
            Some(Answer::RatherNotSay) => add(name_of(kind), UNSAID.to_owned()),
            None => {}
        }
    }
    if let Some(note) = &session.note {
        add("note", note.as_str().to_owned());
    }
    Fields::of(all)
}

pub(super) fn page(
    visit: &mut Visit<'_>,
    screen: &LogSessionScreen,
    fields: &Fields,
    problems: Vec<Problem>,
) -> Shown {
    // A form that comes back has what was typed; a new one, of a session that is put right, what stands
    // there now.
    let filled = screen.current.as_ref().filter(|_| fields.is_empty()).map(present);
    let form = form(visit, screen, filled.as_ref().unwrap_or(fields));
    let presses = visit.presses(&screen.actions)?;
    let current = screen.current.as_ref();
    let says = current.map(|current| {
        std::iter::once(current.when.clone())
            .chain(current.says.clone())
            .chain(current.signs.clone())
    });
    Ok(Page::new(&visit.frame, &screen.title)
        .problems(problems)
        .text(says.into_iter().flatten())
        .text(screen.cautions.first().cloned())
        .form(form)
        .quiet(screen.cautions.iter().skip(1).cloned())
        .presses(presses)
        .answer())
}

fn form(visit: &Visit<'_>, screen: &LogSessionScreen, fields: &Fields) -> Form {
    let words = visit.words.clone();
    let one = |name: &str, label: &str, choices: Vec<(String, String)>| {
        Field::new(name, label, Kind::One(choices_of(name, choices, fields)))
    };
    let practices = screen.practices.iter().map(|own| (code(&own.practice), own.label.clone()));
    let mut all = vec![one("practice", &screen.practice_label, practices.collect())];
    if !screen.sizes.is_empty() {
        let sizes = screen
            .sizes
            .iter()
            .map(|own| (own.widest_diameter_tenths_mm.get().to_string(), own.label.clone()));
        let other = (OTHER_SIZE.to_owned(), words.text("page-size-another", &[]));
        let field = one("size", &screen.size_label, sizes.chain([other]).collect());
        all.push(field.hint(words.text("page-size-hint", &[])));
        let kind = line("text", fields, "size_mm", "decimal", true);
        let another = Field::new("size_mm", words.text("page-size-mm", &[]), kind);
        all.push(another.hint(screen.size_other.clone()));
    }
    let positions = screen.positions.iter().map(|own| (code(&own.position), own.label.clone()));
    all.push(one("position", &screen.position_label, positions.collect()));
    let minutes = line("text", fields, "minutes", "decimal", true);
    all.push(Field::new("minutes", &screen.minutes_label, minutes));
    let ended = screen.ended.iter().map(|own| (code(&own.ended), own.label.clone()));
    all.push(one("ended", &screen.ended_label, ended.collect()));
    all.extend(screen.ratings.iter().map(|question| scale(question, fields)));
    let new = Kind::Folded {
        parts: signs::grouped(&screen.signs, fields),
        open: fields.first("sign").is_some(),
    };
    all.push(Field::new("signs", &screen.signs_label, new));
    let note = Kind::Passage { value: fields.first("note").unwrap_or_default().to_owned() };
    all.push(Field::new("note", &screen.note_label, note).hint(screen.note_caution.clone()));
    let began = words.text("page-when", &[]);
    all.push(match &screen.current {
        None => when::field(visit, began, fields),
        Some(_) => when::changed(visit, began, fields),
    });
    Form {
        to: match &screen.current {
            None => "/log".to_owned(),
            Some(current) => format!("/entry/{}/correct", current.of),
        },
        upload: false,
        hidden: vec![("id", screen.id.to_string())],
        fields: all,
        submit: words.text("page-keep", &[]),
        look: Look::Next,
        also: vec![],
    }
}

/// Choices of a question, the one that was taken chosen.
pub(super) fn choices_of(
    name: &str,
    choices: Vec<(String, String)>,
    fields: &Fields,
) -> Vec<Choice> {
    let made = choices.into_iter();
    made.map(|(value, label)| Choice { chosen: fields.has(name, &value), value, label }).collect()
}

/// A line with what was typed.
pub(super) fn line(
    input: &'static str,
    fields: &Fields,
    name: &str,
    mode: &'static str,
    short: bool,
) -> Kind {
    let value = fields.first(name).unwrap_or_default().to_owned();
    Kind::Line { input, value, mode, offers: vec![], short }
}

pub(super) fn name_of(kind: RatingKind) -> &'static str {
    match kind {
        RatingKind::Peak => "peak",
        RatingKind::Before => "before",
        RatingKind::After => "after",
        RatingKind::Worry => "worry",
    }
}

pub(super) fn scale(question: &RatingQuestion, fields: &Fields) -> Field {
    let name = name_of(question.rating);
    let numbers = (0..=10).map(|number: u8| (number.to_string(), number.to_string())).collect();
    let kind = Kind::Scale {
        least: question.least.clone(),
        most: question.most.clone(),
        numbers: choices_of(name, numbers, fields),
        unsaid: Some(Choice {
            value: UNSAID.to_owned(),
            label: question.rather_not_say.clone(),
            chosen: fields.has(name, UNSAID),
        }),
    };
    Field::new(name, &question.question, kind)
}

/// Gathers what has to be put right, so that everything is told at once.
struct Reader<'a, 'b> {
    visit: &'a Visit<'b>,
    fields: &'a Fields,
    problems: Vec<Problem>,
}

impl Reader<'_, '_> {
    fn wrong(&mut self, field: &str, says: String) {
        self.problems.push(Problem::at(field, says));
    }

    /// One of the values on offer; anything else has to be chosen again.
    fn one<T: Clone>(&mut self, name: &str, offered: &[(String, T)], says: String) -> Option<T> {
        let sent = self.fields.first(name);
        let found = offered.iter().find(|(value, _)| Some(value.as_str()) == sent);
        if found.is_none() {
            self.wrong(name, says);
        }
        found.map(|(_, value)| value.clone())
    }

    fn rating(&mut self, kind: RatingKind, needed: bool) -> Option<Answer> {
        let name = name_of(kind);
        let answer = match self.fields.first(name) {
            Some(UNSAID) => Some(Answer::RatherNotSay),
            Some(number) => {
                let rating = number.parse().ok().and_then(|number| Rating::new(number).ok());
                rating.map(Answer::Rated)
            }
            None if !needed => return None,
            None => None,
        };
        if answer.is_none() {
            self.wrong(name, self.visit.words.text("page-error-rating", &[]));
        }
        answer
    }
}

type Read = Result<(SessionTold, Option<frond_core::moment::Stamp>), Vec<Problem>>;

fn read(visit: &Visit<'_>, screen: &LogSessionScreen, fields: &Fields) -> Read {
    let words = &visit.words;
    let mut reader = Reader { visit, fields, problems: Vec::new() };
    let practices: Vec<(String, Practice)> =
        screen.practices.iter().map(|own| (code(&own.practice), own.practice.clone())).collect();
    let practice = reader.one("practice", &practices, words.text("page-error-practice", &[]));
    let trainer = practice == Some(Practice::Trainer);
    let size = if trainer { size(&mut reader) } else { None };
    let positions: Vec<(String, Position)> =
        screen.positions.iter().map(|own| (code(&own.position), own.position)).collect();
    let position = reader.one("position", &positions, words.text("page-error-position", &[]));
    let endings: Vec<(String, Ended)> =
        screen.ended.iter().map(|own| (code(&own.ended), own.ended)).collect();
    let minutes = match (fields.first("minutes"), fields.first("ended").and_then(decode::<Ended>)) {
        (None, Some(Ended::CouldNotStart(_))) => Some(0),
        (typed, _) => typed.and_then(|typed| args::minutes(&typed.replace(',', ".")).ok()),
    };
    if minutes.is_none() {
        reader.wrong("minutes", words.text("page-error-minutes", &[]));
    }
    let ended = reader.one("ended", &endings, words.text("page-error-ended", &[]));
    let mut ratings = Ratings::default();
    for question in &screen.ratings {
        let answer = reader.rating(question.rating, trainer);
        match question.rating {
            RatingKind::Peak => ratings.peak = answer,
            RatingKind::Before => ratings.before = answer,
            RatingKind::After => ratings.after = answer,
            RatingKind::Worry => ratings.worry = answer,
        }
    }
    let signs = signs::chosen(fields);
    let note = note(visit, fields).unwrap_or_else(|problem| {
        reader.problems.push(problem);
        None
    });
    let happened = when::read(visit, fields).unwrap_or_else(|problem| {
        reader.problems.push(problem);
        None
    });
    match (practice, position, ended, minutes) {
        (Some(practice), Some(position), Some(ended), Some(practised_seconds))
            if reader.problems.is_empty() =>
        {
            let parts = vec![UsedPart { widest_diameter_tenths_mm: size, practised_seconds }];
            Ok((SessionTold { practice, parts, position, ended, ratings, signs, note }, happened))
        }
        _ => Err(reader.problems),
    }
}

fn size(reader: &mut Reader<'_, '_>) -> Option<Size> {
    let sent = reader.fields.first("size");
    let typed = reader.fields.first("size_mm").map(|typed| typed.replace(',', "."));
    if sent == Some(OTHER_SIZE) {
        let size = typed.and_then(|typed| args::size(&typed).ok());
        if size.is_none() {
            let says = reader.visit.words.text("page-error-size-mm", &[]);
            reader.wrong("size_mm", says);
        }
        return size;
    }
    let size = sent.and_then(|sent| Size::new(sent.parse().ok()?).ok());
    if size.is_none() {
        let says = reader.visit.words.text("refusal-size-missing", &[]);
        reader.wrong("size", says);
    }
    size
}

/// A note; empty is none.
pub(super) fn note(visit: &Visit<'_>, fields: &Fields) -> Result<Option<Passage>, Problem> {
    let note = fields.first("note").map(Passage::new).transpose();
    note.map_err(|_| Problem::at("note", visit.words.text("page-error-note", &[])))
}
