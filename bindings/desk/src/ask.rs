//! Questions on the terminal. Nothing is preselected: an answer that is not one of those offered is asked
//! for again.

use std::io::{BufRead, IsTerminal, Write};

use crate::failure::Failure;
use crate::print::Page;

/// Whether somebody is there to answer.
pub(crate) fn somebody_there() -> bool {
    std::io::stdin().is_terminal() && std::io::stdout().is_terminal()
}

/// One line as typed, trimmed.
pub(crate) fn line(prompt: &str) -> Result<String, Failure> {
    let broken = |_| Failure::Else("The answer could not be read. Nothing was written.".to_owned());
    let mut out = std::io::stdout().lock();
    write!(out, "{prompt} ").and_then(|()| out.flush()).map_err(broken)?;
    let mut typed = String::new();
    let read = std::io::stdin().lock().read_line(&mut typed).map_err(broken)?;
    if read == 0 {
        return Err(Failure::input("There was no answer. Nothing was written."));
    }
    Ok(typed.trim().to_owned())
}

/// A question with numbered answers; gives the index chosen.
pub(crate) fn choose(question: &str, answers: &[&str]) -> Result<usize, Failure> {
    let mut page = Page::new();
    page.gap().paragraph(question);
    for (index, answer) in answers.iter().enumerate() {
        page.numbered(index + 1, answer);
    }
    page.show();
    loop {
        let typed = line(">")?;
        match typed.parse::<usize>().ok().and_then(|number| number.checked_sub(1)) {
            Some(index) if index < answers.len() => return Ok(index),
            _ => {
                Page::new().paragraph(&format!("Type a number from 1 to {}.", answers.len())).show()
            }
        }
    }
}

/// A question whose answer is read by `read`; asked again until it can be.
pub(crate) fn until<T>(
    question: &str,
    again: &str,
    read: impl Fn(&str) -> Option<T>,
) -> Result<T, Failure> {
    Page::new().gap().paragraph(question).show();
    loop {
        if let Some(value) = read(&line(">")?) {
            return Ok(value);
        }
        Page::new().paragraph(again).show();
    }
}

/// Yes or no; anything but yes is no.
pub(crate) fn yes(question: &str) -> Result<bool, Failure> {
    Page::new().gap().paragraph(question).show();
    let typed = line("[y/N]")?;
    Ok(matches!(typed.to_lowercase().as_str(), "y" | "yes"))
}

/// Whether it is to be done: given on the command line, or answered. `otherwise` is said where it is not.
pub(crate) fn sure(yes: bool, question: &str, otherwise: &str) -> Result<(), Failure> {
    if yes {
        return Ok(());
    }
    if !somebody_there() {
        return Err(Failure::input(format!(
            "There is no terminal to ask. {otherwise} Give --yes to go on without being asked."
        )));
    }
    if self::yes(question)? { Ok(()) } else { Err(Failure::input(otherwise)) }
}
