//! What a desk's pages show besides text: tables, drawings, people.

use askama::Template;

/// A table. Its first column names its rows.
#[derive(Template)]
#[template(path = "parts/table_body.html")]
pub(crate) struct Table {
    /// What it is.
    pub(crate) caption: String,
    /// Its columns.
    pub(crate) columns: Vec<String>,
    /// Its rows.
    pub(crate) rows: Vec<Vec<String>>,
}

/// A drawing.
pub(crate) struct Figure {
    /// Its title.
    pub(crate) title: String,
    /// The drawing, as markup of ours; absent where it could not be drawn.
    pub(crate) drawing: Option<String>,
    /// What has to be known of it.
    pub(crate) notes: Vec<String>,
    /// Each mark, drawn, and what it means.
    pub(crate) key: Vec<(String, String)>,
    /// What the table is called.
    pub(crate) table_title: String,
    /// The same as a table.
    pub(crate) table: Table,
}

/// Somebody in a list.
pub(crate) struct Person {
    /// Where the summary is read.
    pub(crate) to: String,
    /// The nickname.
    pub(crate) name: String,
    /// What must not be missed.
    pub(crate) marks: Vec<String>,
    /// What else is known.
    pub(crate) facts: Vec<String>,
}
