//! The questions of a draft's form, each made from its name: its words, what stands there, what can be
//! chosen. Decides which sort of control a field gets, and which buttons stand with a thing of a list.

use frond_core::programme::draft::{Draft, Place, Tree, hint, label};
use frond_core::words::Words;

use crate::pages::parts::{Button, Choice, Field, Kind};

/// Makes questions for one draft.
pub(super) struct Asks<'a> {
    pub(super) draft: &'a Draft,
    pub(super) tree: Tree,
    pub(super) words: &'a Words,
}

/// So many answers stand open; more are folded into a list to choose from.
const OPEN: usize = 4;

impl<'a> Asks<'a> {
    pub(super) fn of(draft: &'a Draft, words: &'a Words) -> Self {
        Self { draft, tree: draft.tree(), words }
    }

    fn field(&self, name: &str, kind: Kind) -> Field {
        let field = Field::new(name, label(name, self.words).unwrap_or_default(), kind);
        match hint(name, self.words) {
            Some(hint) => field.hint(hint),
            None => field,
        }
    }

    fn typed(
        &self,
        name: &str,
        input: &'static str,
        mode: &'static str,
        offers: Vec<String>,
    ) -> Field {
        let value = self.tree.typed(name).to_owned();
        let short = !mode.is_empty() || input == "date";
        self.field(name, Kind::Line { input, value, mode, offers, short })
    }

    /// One line.
    pub(super) fn line(&self, name: &str) -> Field {
        self.typed(name, "text", "", Vec::new())
    }

    /// One line with words that may be taken.
    pub(super) fn offering(&self, name: &str, offers: Vec<String>) -> Field {
        self.typed(name, "text", "", offers)
    }

    /// A whole number. Not `type=number`: a browser would throw away what is none, and it would be lost.
    pub(super) fn whole(&self, name: &str) -> Field {
        self.typed(name, "text", "numeric", Vec::new())
    }

    /// A number with a decimal sign.
    pub(super) fn decimal(&self, name: &str) -> Field {
        self.typed(name, "text", "decimal", Vec::new())
    }

    /// A telephone number.
    pub(super) fn phone(&self, name: &str) -> Field {
        let value = self.tree.typed(name).to_owned();
        let (mode, offers) = ("tel", Vec::new());
        self.field(name, Kind::Line { input: "text", value, mode, offers, short: false })
    }

    /// A day.
    pub(super) fn day(&self, name: &str) -> Field {
        self.typed(name, "date", "", Vec::new())
    }

    /// Several lines.
    pub(super) fn passage(&self, name: &str) -> Field {
        self.field(name, Kind::Passage { value: self.tree.typed(name).to_owned() })
    }

    /// One of several.
    pub(super) fn choice(&self, name: &str) -> Field {
        let own = self.tree.typed(name);
        let choices = self.draft.choices(name, self.words).unwrap_or_default();
        let mut choices: Vec<Choice> = choices
            .into_iter()
            .map(|(value, label)| Choice { chosen: value == own, value, label })
            .collect();
        // What names a step grows with the ladder, and a condition stays short.
        let folded = ["target", "start_at", "rating"].iter().any(|end| name.ends_with(end));
        if choices.len() <= OPEN && !folded {
            return self.field(name, Kind::One(choices));
        }
        let chosen = choices.iter().all(|one| !one.chosen);
        let label = self.words.text("compose-choose", &[]);
        choices.insert(0, Choice { value: String::new(), label, chosen });
        self.field(name, Kind::Select(choices))
    }

    /// Any of several.
    pub(super) fn any(&self, name: &str) -> Field {
        let choices = self.draft.choices(name, self.words).unwrap_or_default();
        let choices = choices
            .into_iter()
            .map(|(value, label)| Choice { chosen: self.tree.holds(name, &value), value, label })
            .collect();
        self.field(name, Kind::AnyOf(choices))
    }

    /// Something to tick.
    pub(super) fn tick(&self, name: &str) -> Field {
        self.field(name, Kind::Tick { chosen: self.tree.ticked(name) })
    }

    /// Fields that belong together.
    pub(super) fn together(&self, id: &str, label: String, fields: Vec<Field>) -> Field {
        Field::new(id, label, Kind::Together(fields))
    }

    /// From so many minutes to so many.
    pub(super) fn minutes(&self, at: &str) -> Field {
        let fields = vec![
            self.whole(&format!("{at}.minutes_least")),
            self.whole(&format!("{at}.minutes_most")),
        ];
        self.together(
            &format!("{at}.minutes"),
            self.words.text("compose-topic-minutes-title", &[]),
            fields,
        )
    }

    /// How often.
    pub(super) fn schedule(&self, at: &str) -> Field {
        let names = ["weekly_least", "weekly_most", "daily_most", "rest_days"];
        let fields = names.map(|name| self.whole(&format!("{at}.schedule.{name}"))).into();
        let title = self.words.text("compose-topic-schedule-title", &[]);
        self.together(&format!("{at}.schedule"), title, fields)
    }

    /// A thing of a list, with its buttons.
    pub(super) fn item(&self, at: &str, title: String, fields: Vec<Field>) -> Field {
        Field::new(at, title, Kind::Group { fields, buttons: self.item_buttons(at) })
    }

    /// A list under its heading.
    pub(super) fn list(&self, name: &str, fields: Vec<Field>, buttons: Vec<Button>) -> Field {
        self.field(name, Kind::List { fields, buttons })
    }

    /// A list of single lines or texts.
    pub(super) fn lines(&self, list: &str, long: bool, add: String) -> Field {
        let fields = (0..self.tree.len(list))
            .map(|index| {
                let at = format!("{list}.{index}");
                let field = if long { self.passage(&at) } else { self.line(&at) };
                let title = self.draft.thing_said(&at, self.words);
                let kind = Kind::Group { fields: vec![field], buttons: self.item_buttons(&at) };
                Field::new(&format!("{at}.line"), title, kind)
            })
            .collect();
        self.list(list, fields, vec![self.button(format!("add:{list}"), add)])
    }

    /// What a place is called.
    pub(super) fn about(&self, at: &str) -> String {
        self.draft.place_said(&Place::new(at), self.words)
    }

    /// A button.
    pub(super) fn button(&self, then: impl Into<String>, label: String) -> Button {
        Button { then: then.into(), label, about: None }
    }

    /// Up, down, copy, take out; those that can be done where it stands.
    pub(super) fn item_buttons(&self, at: &str) -> Vec<Button> {
        let (list, index) = at.rsplit_once('.').unwrap_or((at, "0"));
        let index: usize = index.parse().unwrap_or_default();
        let about = self.about(at);
        let words = self.words;
        let button = |what: &str, label: String| Button {
            then: format!("{what}:{at}"),
            label,
            about: Some(about.clone()),
        };
        let mut buttons = Vec::new();
        if index > 0 {
            buttons.push(button("up", words.text("compose-up", &[])));
        }
        if index + 1 < self.tree.len(list) {
            buttons.push(button("down", words.text("compose-down", &[])));
        }
        buttons.push(button("copy", words.text("compose-copy", &[])));
        buttons.push(button("remove", words.text("compose-remove", &[])));
        buttons
    }
}
