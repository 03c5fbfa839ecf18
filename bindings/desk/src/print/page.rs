//! Text on a page 80 columns wide: headings, paragraphs, points. No colour at all, so that it reads the
//! same in a terminal, a file and a screen reader, and NO_COLOR has nothing to switch off.

use std::io::Write;

use textwrap::{Options, WordSeparator, WordSplitter, WrapAlgorithm, fill};

/// Columns.
const WIDTH: usize = 80;

/// A page being written.
#[derive(Default)]
pub(crate) struct Page {
    text: String,
}

impl Page {
    /// An empty page.
    pub(crate) fn new() -> Self {
        Self::default()
    }

    /// A heading over the whole page.
    pub(crate) fn title(&mut self, text: &str) -> &mut Self {
        self.gap();
        let columns = textwrap::core::display_width(text).min(WIDTH);
        self.wrapped(text, "", "");
        self.wrapped(&"=".repeat(columns), "", "");
        self.gap()
    }

    /// A heading over a part.
    pub(crate) fn heading(&mut self, text: &str) -> &mut Self {
        self.gap().wrapped(text, "", "")
    }

    /// A paragraph.
    pub(crate) fn paragraph(&mut self, text: &str) -> &mut Self {
        self.wrapped(text, "", "")
    }

    /// A paragraph, moved in by `columns`.
    pub(crate) fn inside(&mut self, columns: usize, text: &str) -> &mut Self {
        let indent = " ".repeat(columns);
        self.wrapped(text, &indent, &indent)
    }

    /// A point of a list.
    pub(crate) fn point(&mut self, text: &str) -> &mut Self {
        self.wrapped(text, "  - ", "    ")
    }

    /// A point of a list inside another.
    pub(crate) fn inner_point(&mut self, text: &str) -> &mut Self {
        self.wrapped(text, "      - ", "        ")
    }

    /// Sentences as points; one that itself begins with a dash belongs to the one before it.
    pub(crate) fn sentences(&mut self, sentences: &[String]) -> &mut Self {
        for sentence in sentences {
            match sentence.strip_prefix("- ") {
                Some(inner) => self.inner_point(inner),
                None => self.point(sentence),
            };
        }
        self
    }

    /// A numbered point.
    pub(crate) fn numbered(&mut self, number: usize, text: &str) -> &mut Self {
        self.wrapped(text, &format!("{number:4}  "), "      ")
    }

    /// A word at the margin and its text.
    pub(crate) fn beside(&mut self, word: &str, text: &str, column: usize) -> &mut Self {
        let gap = column.saturating_sub(textwrap::core::display_width(word)).max(2);
        self.wrapped(text, &format!("{word}{}", " ".repeat(gap)), &" ".repeat(column))
    }

    /// A line that must not be broken: a command to copy.
    pub(crate) fn line_as_it_is(&mut self, text: &str) -> &mut Self {
        self.line(&printable(text));
        self
    }

    /// An empty line, unless there is one.
    pub(crate) fn gap(&mut self) -> &mut Self {
        if !self.text.is_empty() && !self.text.ends_with("\n\n") {
            self.text.push('\n');
        }
        self
    }

    fn wrapped(&mut self, text: &str, first: &str, other: &str) -> &mut Self {
        let options = Options::new(WIDTH)
            .initial_indent(first)
            .subsequent_indent(other)
            // A number or an id that is too long is left whole, so that it can be copied.
            .break_words(false)
            .word_splitter(WordSplitter::NoHyphenation)
            // Said, and not left to what other crates ask of textwrap: lines would break elsewhere beside them.
            .word_separator(WordSeparator::AsciiSpace)
            .wrap_algorithm(WrapAlgorithm::FirstFit);
        let mut lines = text.lines();
        if let Some(line) = lines.next() {
            self.line(&fill(&printable(line), &options));
        }
        for line in lines {
            self.line(&fill(&printable(line), options.clone().initial_indent(other)));
        }
        self
    }

    fn line(&mut self, text: &str) {
        self.text.push_str(text.trim_end());
        self.text.push('\n');
    }

    /// The text so far.
    pub(crate) fn text(&self) -> &str {
        &self.text
    }

    /// Writes the page to standard output. A reader that went away is not an error.
    pub(crate) fn show(&self) {
        let mut out = std::io::stdout().lock();
        let _ = out.write_all(self.text.as_bytes()).and_then(|()| out.flush());
    }
}

/// Text from a file must not steer the terminal.
fn printable(text: &str) -> String {
    text.chars().filter(|c| !c.is_control()).collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn lines_are_at_most_80_columns_and_a_long_word_stays_whole() {
        let mut page = Page::new();
        page.title("Today").point(&"words and more words ".repeat(10));
        page.inside(4, &"0".repeat(100));
        for line in page.text().lines() {
            assert!(line.chars().count() <= 80 || line.trim() == "0".repeat(100), "{line}");
        }
        assert!(page.text().starts_with("Today\n=====\n\n  - words"));
    }

    #[test]
    fn control_characters_do_not_reach_the_terminal() {
        let mut page = Page::new();
        page.paragraph("a\u{1b}[31mb\u{7}\nc");
        assert_eq!(page.text(), "a[31mb\nc\n");
    }
}
