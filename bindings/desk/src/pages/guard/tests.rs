//! Who is let in.
