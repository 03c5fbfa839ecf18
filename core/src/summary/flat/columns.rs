//! What a column is called, of which sort it is, and what stands in it; and the rows made from such a list,
//! so that the list and the lines cannot come apart.

use serde::Serialize;

/// The sort of a column, by a name that both DuckDB and Apache Spark know.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "UPPERCASE")]
pub enum Sort {
    /// Text; days and times too, as RFC 3339 writes them.
    String,
    /// A whole number.
    BigInt,
    /// A number with a fraction.
    Double,
    /// True or false.
    Boolean,
}

/// A column.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
pub struct Column {
    /// What it is called.
    pub name: &'static str,
    /// Its sort.
    pub sort: Sort,
    /// What stands in it.
    pub meaning: &'static str,
}

/// A row: each column with its type, its sort and its meaning.
macro_rules! row {
    ($(#[$doc:meta])* $name:ident { $($column:ident: $type:ty, $sort:ident, $meaning:literal;)+ }) => {
        $(#[$doc])*
        #[derive(Clone, Debug, PartialEq, Serialize)]
        pub struct $name {
            $(#[doc = $meaning] pub $column: $type,)+
        }

        impl $name {
            /// The columns, in the order they are written.
            pub const COLUMNS: &'static [Column] = &[
                $(Column { name: stringify!($column), sort: Sort::$sort, meaning: $meaning },)+
            ];
        }
    };
}

pub(super) use row;
