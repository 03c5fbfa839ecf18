//! Decides where a source is changed, and into what.
//!
//! The operators are those that the usual tools for mutation testing have in common, PIT's "conditionals boundary",
//! "negate conditionals" and "math", and for Rust the table of cargo-mutants (<https://mutants.rs/mutants.html>):
//!
//! - a comparison moved by its boundary (`<` to `<=`) and turned round (`<` to `>=`); `==` to `!=` and back
//! - `&&` to `||` and back
//! - `+ - * / %` each to two others, in assignments too
//! - `!` and the sign of a number left out
//! - an arm of a `match` left out where another takes everything; a guard always and never true
//! - a function's body replaced by a plain value of what it promises
//!
//! Left alone: tests; `const` and `static`, which are worked out before anything runs; the insides of macros, which are
//! not expressions yet; `let` in a chain of conditions, which cannot be joined by `||`; `Debug` and `Display`, which no
//! rule hangs on; what a `derive` writes.

use std::ops::Range;

use syn::spanned::Spanned;
use syn::visit::{self, Visit};
use syn::{BinOp, Block, Expr, Pat, Signature, UnOp};

use super::values::{self, Plain};

/// How changes stand at a site.
pub enum Shape {
    /// Around an expression.
    Wrap,
    /// At the beginning of a function's body: changed, and gone.
    Before,
    /// Behind the pattern of an arm: the arm is not taken.
    Guard,
    /// Around the body of a function that promises an iterator: its items are left out.
    Emptied,
}

/// A change at a site.
pub struct Change {
    /// What stands in the woven text.
    pub text: String,
    /// What the change is called.
    pub name: String,
}

/// A place of the source with its changes.
pub struct Site {
    /// How they stand there.
    pub shape: Shape,
    /// Bytes of the source.
    pub range: Range<usize>,
    /// The changes.
    pub changes: Vec<Change>,
}

/// Every place that is changed.
pub fn find(source: &str) -> Result<Vec<Site>, syn::Error> {
    let file = syn::parse_file(source)?;
    let mut finder = Finder { source, within: Vec::new(), sites: Vec::new() };
    finder.visit_file(&file);
    Ok(finder.sites)
}

struct Finder<'s> {
    source: &'s str,
    /// The type or module and function around.
    within: Vec<String>,
    sites: Vec<Site>,
}

fn bytes(of: &impl Spanned) -> Range<usize> {
    of.span().byte_range()
}

/// Whether something is there for tests only.
fn is_for_tests(attributes: &[syn::Attribute]) -> bool {
    attributes.iter().any(|one| {
        one.path().is_ident("test")
            || (one.path().is_ident("cfg")
                && one.parse_args::<syn::Path>().is_ok_and(|what| what.is_ident("test")))
    })
}

impl Finder<'_> {
    fn text(&self, range: &Range<usize>) -> String {
        self.source.get(range.clone()).unwrap_or_default().to_owned()
    }

    /// The text on one line, for a name.
    fn short(text: &str) -> String {
        text.lines()
            .map(|line| line.split_once("//").map_or(line, |(before, _)| before))
            .flat_map(str::split_whitespace)
            .collect::<Vec<_>>()
            .join(" ")
    }

    fn add(&mut self, shape: Shape, range: Range<usize>, was: &str, becomes: Vec<String>) {
        let within = self.within.join("::");
        let name = |text: &str| format!("{within}: {} => {}", Self::short(was), Self::short(text));
        let changes = becomes.into_iter().map(|text| Change { name: name(&text), text }).collect();
        self.sites.push(Site { shape, range, changes });
    }

    fn wrap(&mut self, whole: &impl Spanned, becomes: Vec<String>) {
        let range = bytes(whole);
        let was = self.text(&range);
        self.add(Shape::Wrap, range, &was, becomes);
    }

    /// An operand as written, in brackets where another operator could take it apart.
    fn operand(&self, one: &Expr) -> String {
        let text = self.text(&bytes(one));
        match one {
            Expr::Binary(_)
            | Expr::Cast(_)
            | Expr::Range(_)
            | Expr::Closure(_)
            | Expr::Unary(_) => format!("({text})"),
            _ => text,
        }
    }

    fn within(&mut self, name: String, look: impl FnOnce(&mut Self)) {
        self.within.push(name);
        look(self);
        self.within.pop();
    }

    fn function(&mut self, signature: &Signature, block: &Block, has_values: bool) {
        if signature.constness.is_some() {
            return;
        }
        self.within(signature.ident.to_string(), |finder| {
            if has_values && !block.stmts.is_empty() {
                finder.body(signature, block);
            }
            finder.visit_block(block);
        });
    }

    fn body(&mut self, signature: &Signature, block: &Block) {
        let whole = bytes(block);
        let inside = whole.start + 1..whole.end - 1;
        let was = Self::short(&self.text(&inside));
        match values::of(&signature.output) {
            Plain::Emptied => self.add(Shape::Emptied, inside, "body", vec!["no items".to_owned()]),
            Plain::Values(all) => {
                let other = all.into_iter().filter(|value| *value != was);
                let returned: Vec<String> = other.map(|value| format!("return {value};")).collect();
                if !returned.is_empty() {
                    self.add(Shape::Before, inside.start..inside.start, "body", returned);
                }
            }
        }
    }
}

/// What an operator becomes.
fn others(operator: &BinOp) -> &'static [&'static str] {
    match operator {
        BinOp::Eq(_) => &["!="],
        BinOp::Ne(_) => &["=="],
        BinOp::Lt(_) => &["<=", ">="],
        BinOp::Le(_) => &["<", ">"],
        BinOp::Gt(_) => &[">=", "<="],
        BinOp::Ge(_) => &[">", "<"],
        BinOp::And(_) => &["||"],
        BinOp::Or(_) => &["&&"],
        BinOp::Add(_) => &["-", "*"],
        BinOp::Sub(_) => &["+", "/"],
        BinOp::Mul(_) => &["+", "/"],
        BinOp::Div(_) => &["%", "*"],
        BinOp::Rem(_) => &["/", "+"],
        BinOp::AddAssign(_) => &["-=", "*="],
        BinOp::SubAssign(_) => &["+=", "/="],
        BinOp::MulAssign(_) => &["+=", "/="],
        BinOp::DivAssign(_) => &["%=", "*="],
        BinOp::RemAssign(_) => &["/=", "+="],
        _ => &[],
    }
}

/// Whether a `let` is among the conditions joined by `&&`.
fn has_let(condition: &Expr) -> bool {
    match condition {
        Expr::Let(_) => true,
        Expr::Binary(joined) => has_let(&joined.left) || has_let(&joined.right),
        _ => false,
    }
}

/// Whether an arm takes whatever comes.
fn takes_all(arm: &syn::Arm) -> bool {
    arm.guard.is_none()
        && match &arm.pat {
            Pat::Wild(_) => true,
            Pat::Ident(name) => {
                name.subpat.is_none() && name.ident.to_string().starts_with(char::is_lowercase)
            }
            _ => false,
        }
}

impl<'ast> Visit<'ast> for Finder<'_> {
    fn visit_item_fn(&mut self, one: &'ast syn::ItemFn) {
        if !is_for_tests(&one.attrs) {
            self.function(&one.sig, &one.block, true);
        }
    }

    fn visit_item_mod(&mut self, one: &'ast syn::ItemMod) {
        if !is_for_tests(&one.attrs) {
            self.within(one.ident.to_string(), |finder| visit::visit_item_mod(finder, one));
        }
    }

    fn visit_item_impl(&mut self, one: &'ast syn::ItemImpl) {
        let of = one
            .trait_
            .as_ref()
            .and_then(|(_, path, _)| path.segments.last())
            .map(|s| s.ident.to_string());
        if is_for_tests(&one.attrs) || matches!(of.as_deref(), Some("Debug" | "Display")) {
            return;
        }
        let kind = match &*one.self_ty {
            syn::Type::Path(path) => path.path.segments.last().map(|s| s.ident.to_string()),
            _ => None,
        };
        let name = [kind, of].into_iter().flatten().collect::<Vec<_>>().join(" as ");
        self.within(name, |finder| {
            for item in &one.items {
                finder.visit_impl_item(item);
            }
        });
    }

    fn visit_impl_item_fn(&mut self, one: &'ast syn::ImplItemFn) {
        if !is_for_tests(&one.attrs) {
            // `Default` is what plain values are made by.
            let is_default = self.within.last().is_some_and(|name| name.ends_with(" as Default"));
            self.function(&one.sig, &one.block, !is_default);
        }
    }

    fn visit_trait_item_fn(&mut self, one: &'ast syn::TraitItemFn) {
        if let Some(block) = &one.default {
            self.function(&one.sig, block, true);
        }
    }

    fn visit_expr_binary(&mut self, one: &'ast syn::ExprBinary) {
        let joins = matches!(one.op, BinOp::And(_) | BinOp::Or(_));
        let others = others(&one.op);
        if !others.is_empty() && !(joins && (has_let(&one.left) || has_let(&one.right))) {
            let (left, right) = (self.operand(&one.left), self.operand(&one.right));
            self.wrap(one, others.iter().map(|other| format!("{left} {other} {right}")).collect());
        }
        visit::visit_expr_binary(self, one);
    }

    fn visit_expr_unary(&mut self, one: &'ast syn::ExprUnary) {
        if matches!(one.op, UnOp::Not(_) | UnOp::Neg(_)) {
            self.wrap(one, vec![self.text(&bytes(&one.expr))]);
        }
        visit::visit_expr_unary(self, one);
    }

    fn visit_expr_match(&mut self, one: &'ast syn::ExprMatch) {
        self.visit_expr(&one.expr);
        for (at, arm) in one.arms.iter().enumerate() {
            let goes_on = one.arms.iter().skip(at + 1).any(takes_all);
            match &arm.guard {
                Some((_, guard)) if !has_let(guard) => {
                    self.wrap(&**guard, vec!["true".to_owned(), "false".to_owned()]);
                    self.visit_expr(guard);
                }
                Some((_, guard)) => self.visit_expr(guard),
                None if goes_on => {
                    let range = bytes(&arm.pat);
                    let was = format!("{} =>", self.text(&range));
                    self.add(Shape::Guard, range, &was, vec!["no such arm".to_owned()]);
                }
                None => {}
            }
            self.visit_expr(&arm.body);
        }
    }

    // What is worked out before anything runs, or is no expression.
    fn visit_item_const(&mut self, _: &'ast syn::ItemConst) {}
    fn visit_item_static(&mut self, _: &'ast syn::ItemStatic) {}
    fn visit_item_enum(&mut self, _: &'ast syn::ItemEnum) {}
    fn visit_item_struct(&mut self, _: &'ast syn::ItemStruct) {}
    fn visit_impl_item_const(&mut self, _: &'ast syn::ImplItemConst) {}
    fn visit_trait_item_const(&mut self, _: &'ast syn::TraitItemConst) {}
    fn visit_expr_const(&mut self, _: &'ast syn::ExprConst) {}
    fn visit_expr_repeat(&mut self, one: &'ast syn::ExprRepeat) {
        self.visit_expr(&one.expr);
    }
    fn visit_macro(&mut self, _: &'ast syn::Macro) {}
    fn visit_pat(&mut self, _: &'ast Pat) {}
    fn visit_type(&mut self, _: &'ast syn::Type) {}
    fn visit_generics(&mut self, _: &'ast syn::Generics) {}
    fn visit_angle_bracketed_generic_arguments(
        &mut self,
        _: &'ast syn::AngleBracketedGenericArguments,
    ) {
    }
    fn visit_attribute(&mut self, _: &'ast syn::Attribute) {}
}
