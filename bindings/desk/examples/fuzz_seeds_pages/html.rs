//! What can be followed and sent on one of our own pages. Reads only what the templates write.

/// What the buttons of a form with several are called.
const THEN: &str = "then";

/// A form with what stands in it; where nothing does, something.
#[derive(Clone)]
pub struct Form {
    /// Where it is sent.
    pub to: String,
    files: bool,
    fields: Vec<(String, String)>,
}

impl Form {
    /// The names of its fields, each once, and its button.
    pub fn names(&self) -> Vec<String> {
        let named = |(name, value): &(String, String)| match name.as_str() {
            THEN => format!("{name} {}", sort_of(value)),
            _ => sort_of(name),
        };
        let mut names: Vec<String> = self.fields.iter().map(named).collect();
        names.sort();
        names.dedup();
        names
    }

    /// The request that sends it.
    pub fn request(&self) -> Vec<u8> {
        let mut text = format!("POST {}\n", self.to);
        if self.files {
            for (name, value) in &self.fields {
                let file = if name.starts_with("file") { "; filename=\"a.json\"" } else { "" };
                text += &format!(
                    "--edge\r\nContent-Disposition: form-data; name=\"{name}\"{file}\r\n\r\n{value}\r\n"
                );
            }
            text += "--edge--\r\n";
        } else {
            let escaped = |text: &str| -> String {
                let plain = |byte: u8| byte.is_ascii_alphanumeric() || b"-_.".contains(&byte);
                let one = |byte: u8| {
                    if plain(byte) { char::from(byte).to_string() } else { format!("%{byte:02X}") }
                };
                text.bytes().map(one).collect()
            };
            let pairs = self.fields.iter().map(|(name, value)| {
                let value = if value.is_empty() { filled(name) } else { value };
                format!("{}={}", escaped(name), escaped(value))
            });
            text += &pairs.collect::<Vec<_>>().join("&");
        }
        text.into_bytes()
    }
}

/// An address or a name without the numbers in it.
pub fn sort_of(text: &str) -> String {
    let mut sort = String::new();
    for part in text.split_inclusive(['/', '.', '-', '=', '?']) {
        let hex = part.len() > 20
            && part.trim_end_matches('/').bytes().all(|own| own.is_ascii_hexdigit());
        if hex || part.bytes().any(|own| own.is_ascii_digit()) {
            sort.push('#')
        } else {
            sort += part
        }
    }
    sort
}

/// Where the links of a page lead, on this server.
pub fn ways(page: &str) -> Vec<String> {
    let links = page.split("href=\"/").skip(1).filter_map(|rest| rest.split('"').next());
    let ways = links.map(|rest| format!("/{}", plain(rest.split('#').next().unwrap_or_default())));
    ways.collect()
}

/// The forms of a page; one with several buttons once for each. Of a draft's page the buttons stand outside too.
pub fn forms(page: &str) -> Vec<Form> {
    let texts = page.split("<form").skip(1).filter_map(|rest| rest.split("</form>").next());
    let mut forms = Vec::new();
    for text in texts {
        let Some(form) = form(text) else { continue };
        let all = if text.contains("name=\"shape\"") { page } else { text };
        let buttons = all.split("<button").skip(1).filter_map(|tag| tag.split('>').next());
        let buttons = buttons.filter(|head| value(head, "name").as_deref() == Some(THEN));
        let before = forms.len();
        for then in buttons.filter_map(|head| value(head, "value")) {
            let mut own = form.clone();
            own.fields.push((THEN.to_owned(), then));
            forms.push(own);
        }
        if forms.len() == before {
            forms.push(form);
        }
    }
    forms
}

fn form(text: &str) -> Option<Form> {
    let head = text.split('>').next()?;
    let (to, files) = (value(head, "action")?, head.contains("multipart"));
    let mut fields: Vec<(String, String)> = Vec::new();
    for tag in text.split('<').skip(1) {
        let (head, inside) = tag.split_once('>').unwrap_or((tag, ""));
        let Some(name) = value(head, "name") else { continue };
        let kind = value(head, "type").unwrap_or_default();
        // Of some choices the first one.
        if kind == "radio" && fields.iter().any(|(own, _)| *own == name) {
            continue;
        }
        if name == THEN {
            continue;
        }
        if head.starts_with("input") || head.starts_with("button") {
            fields.push((name, value(head, "value").unwrap_or_default()));
        } else if head.starts_with("textarea") {
            fields.push((name, plain(inside.trim())));
        } else if head.starts_with("select") {
            let first =
                text.split("<option value=\"").nth(1).and_then(|rest| rest.split('"').next());
            fields.push((name, plain(first.unwrap_or_default())));
        }
    }
    Some(Form { to, files, fields })
}

fn value(head: &str, of: &str) -> Option<String> {
    let (_, rest) = head.split_once(&format!(" {of}=\""))?;
    rest.split('"').next().map(plain)
}

fn plain(text: &str) -> String {
    text.replace("&#34;", "\"")
        .replace("&#39;", "'")
        .replace("&lt;", "<")
        .replace("&gt;", ">")
        .replace("&#38;", "&")
        .replace("&amp;", "&")
}

/// What stands for something typed.
fn filled(name: &str) -> &'static str {
    const NUMBERS: [&str; 8] =
        ["minutes", "seconds", "days", "number", "size", "least", "most", "peak"];
    match name {
        "path" => "/nowhere",
        _ if name.contains("time") => "19:00",
        _ if name.contains("day") || name.contains("from") || name.contains("until") => {
            "2026-05-11"
        }
        _ if NUMBERS.iter().any(|part| name.contains(part)) => "7",
        _ => "Invented",
    }
}
