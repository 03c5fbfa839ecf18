//! What is woven for each kind of change, and what is left alone.

use std::collections::HashSet;

use super::weave;

fn woven(source: &str) -> String {
    weave(source, 1, &HashSet::new()).unwrap().text
}

fn names(source: &str) -> Vec<String> {
    weave(source, 1, &HashSet::new()).unwrap().mutants.into_iter().map(|one| one.name).collect()
}

#[test]
fn a_comparison_and_a_body() {
    assert_eq!(
        woven("fn f(a: u8, b: u8) -> bool { a < b }"),
        "fn f(a: u8, b: u8) -> bool { if crate::mutant(1) { return true; } if crate::mutant(2) { return false; } \
         (if crate::mutant(3) { a <= b } else if crate::mutant(4) { a >= b } else { a < b }) }"
    );
}

#[test]
fn operands_stand_unchanged_in_the_changed_side() {
    assert_eq!(
        woven("fn f() { g(a == b && !c) }"),
        "fn f() { if crate::mutant(1) { return (); } g((if crate::mutant(2) { (a == b) || (!c) } else { \
         (if crate::mutant(3) { a != b } else { a == b }) && (if crate::mutant(4) { c } else { !c }) })) }"
    );
}

#[test]
fn arms_and_guards() {
    assert_eq!(
        woven("fn f() { h(match x { A | B => 1, C if y => 2, _ => 3 }) }"),
        "fn f() { if crate::mutant(1) { return (); } h(match x { A | B if !crate::mutant(2) => 1, \
         C if (if crate::mutant(3) { true } else if crate::mutant(4) { false } else { y }) => 2, _ => 3 }) }"
    );
    // Every arm is needed where none takes the rest.
    assert_eq!(names("fn f() { h(match x { A => 1, B => 2 }) }"), ["f: body => return ();"]);
}

#[test]
fn an_iterator_loses_its_items() {
    assert_eq!(
        woven("fn f() -> impl Iterator<Item = u8> { list.iter() }"),
        "fn f() -> impl Iterator<Item = u8> { ({  list.iter()  }).filter(move |_| !crate::mutant(1))}"
    );
}

#[test]
fn what_is_left_alone() {
    for source in [
        "const N: usize = 1 + 2;",
        "static S: bool = !true;",
        "const fn f() -> u8 { 1 + 2 }",
        "#[cfg(test)] mod tests { fn f() -> u8 { 1 + 2 } }",
        "#[test] fn f() { g(1 + 2) }",
        "impl fmt::Debug for A { fn fmt(&self) -> u8 { 1 + 2 } }",
        "enum E { A = 1 + 2 }",
        "fn f() {}",
        "impl A { const N: i8 = -1; }",
    ] {
        assert_eq!(woven(source), source);
    }
    // Patterns, types, lengths and the insides of macros; a chain with a `let`.
    let source = "fn f() { let x: [u8; 1 + 2] = [0; 3 * 4]; if let -1 = x && y { vec![a == b] } }";
    assert_eq!(names(source), ["f: body => return ();"]);
    let chain = "fn f() { if a && b && let Some(c) = d {} }";
    assert_eq!(names(chain), ["f: body => return ();", "f: a && b => a || b"]);
}

#[test]
fn plain_values_by_type() {
    let of = |kind: &str| {
        let all = names(&format!("fn f() -> {kind} {{ g() }}"));
        all.iter()
            .map(|name| name.replace("f: body => return ", "").replace(';', ""))
            .collect::<Vec<_>>()
    };
    assert_eq!(of("i32"), ["0", "1", "-1"]);
    assert_eq!(of("Option<bool>"), ["None", "Some(true)", "Some(false)"]);
    assert_eq!(of("Result<(), E>"), ["Ok(())"]);
    assert_eq!(of("Vec<u8>"), ["::std::vec::Vec::new()", "::std::vec::Vec::from([0])"]);
    assert_eq!(of("&str"), ["\"\"", "\"xyzzy\""]);
    assert_eq!(of("(bool, u8)"), ["(true, 0)", "(true, 1)", "(false, 0)", "(false, 1)"]);
    assert_eq!(of("Other"), ["::std::default::Default::default()"]);
    assert_eq!(of("impl Fn()"), Vec::<String>::new());
    // The same as what stands there is no change.
    assert_eq!(names("fn f() -> bool { false }"), ["f: body => return true;"]);
}

#[test]
fn names_hold_no_line_and_count_what_is_alike() {
    let source = "impl A {\n fn f() { g(a + 1);\n g(a + 1) } }";
    let all = weave(source, 7, &HashSet::new()).unwrap().mutants;
    let said: Vec<_> = all.iter().map(|one| (one.number, one.line, one.name.as_str())).collect();
    assert_eq!(
        said,
        [
            (7, 2, "A::f: body => return ();"),
            (8, 2, "A::f: a + 1 => a - 1"),
            (9, 2, "A::f: a + 1 => a * 1"),
            (10, 3, "A::f: a + 1 => a - 1 #2"),
            (11, 3, "A::f: a + 1 => a * 1 #2"),
        ]
    );
}

#[test]
fn what_is_left_out_keeps_its_number() {
    let source = "fn f() -> bool { a < b }";
    let left_out = HashSet::from([1, 3]);
    let woven = weave(source, 1, &left_out).unwrap();
    assert_eq!(woven.mutants.len(), 4);
    assert_eq!(
        woven.text,
        "fn f() -> bool { if crate::mutant(2) { return false; } (if crate::mutant(4) { a >= b } else { a < b }) }"
    );
}

#[test]
fn a_message_speaks_of_the_innermost_change() {
    let woven = weave("fn f() { g(a + b) }", 1, &HashSet::new()).unwrap();
    let at = |text: &str| {
        let start = woven.text.find(text).unwrap();
        woven.spoken_of(&(start..start + text.len())).to_vec()
    };
    assert_eq!(at("a - b"), [2]);
    assert_eq!(at("a * b"), [3]);
    assert_eq!(at("a + b"), [2, 3]);
    assert_eq!(at("return ()"), [1]);
    assert_eq!(at("fn f"), [0; 0]);
}

#[test]
fn what_is_not_rust_is_refused() {
    assert!(weave("fn f( {", 1, &HashSet::new()).is_err());
}
