//! The drawn code, read back by another program (rqrr), holds the plan; its size is that of the published table.

use frond_core::handover::LINK_MOST;
use frond_core::ports::OsRandom;
use frond_core::sealing::{Follows, SigningKey};
use zeroize::Zeroizing;

use super::*;

const SAYS: Says<'_> = Says { title: "A <code>", description: "Of a \"plan\" & more" };

fn key(byte: u8) -> SigningKey {
    SigningKey::from_seed(&Zeroizing::new([byte; 32]))
}

fn programmes() -> Vec<(String, String)> {
    let folder = concat!(env!("CARGO_MANIFEST_DIR"), "/../../fixtures/programmes");
    let mut all: Vec<(String, String)> = std::fs::read_dir(folder)
        .unwrap()
        .map(|entry| entry.unwrap().path())
        .filter(|path| path.extension().is_some_and(|ext| ext == "json"))
        .map(|path| {
            let name = path.file_name().unwrap().to_string_lossy().into_owned();
            (name, std::fs::read_to_string(path).unwrap())
        })
        .collect();
    all.sort();
    all
}

/// The drawing as a camera sees it: the path's squares, four pixels each, on white.
fn seen(svg: &str) -> (usize, Vec<bool>) {
    let between = |from: &str, to: &str| svg.split(from).nth(1).unwrap().split(to).next().unwrap();
    let side: usize = between("viewBox=\"0 0 ", " ").parse().unwrap();
    let scale = 4;
    let mut dark = vec![false; side * side * scale * scale];
    for run in between("<path d=\"", "\"").split('M').skip(1) {
        let (x, rest) = run.split_once(' ').unwrap();
        let (y, rest) = rest.split_once('h').unwrap();
        let (length, _) = rest.split_once('v').unwrap();
        let (x, y, length): (usize, usize, usize) =
            (x.parse().unwrap(), y.parse().unwrap(), length.parse().unwrap());
        for row in y * scale..(y + 1) * scale {
            for column in x * scale..(x + length) * scale {
                dark[row * side * scale + column] = true;
            }
        }
    }
    (side * scale, dark)
}

/// Read by a program of other people's, which knows nothing of how it was drawn.
fn decoded(svg: &str) -> (usize, String) {
    let (side, dark) = seen(svg);
    let mut image = rqrr::PreparedImage::prepare_from_greyscale(side, side, |x, y| {
        if dark[y * side + x] { 0 } else { 255 }
    });
    let grids = image.detect_grids();
    assert_eq!(grids.len(), 1);
    let (about, text) = grids[0].decode().unwrap();
    (about.version.0, text)
}

#[test]
fn an_independent_decoder_reads_every_fixture_programme_from_its_code() {
    for (name, programme) in programmes() {
        let handed = HandOver::sign(programme.as_bytes(), &key(1), None).unwrap();
        let code = code(&handed, &Way::Open, &SAYS, &OsRandom).unwrap();
        let (version, text) = decoded(&code.svg);
        println!("{name}: version {version}, {} characters", text.len());
        assert_eq!((version, &text), (usize::from(code.version), &code.link), "{name}");
        let came = HandOver::from_link(&text, None).unwrap();
        assert_eq!(came.text(), handed.text(), "{name}");
        assert!(came.programme() == handed.programme(), "{name}");
    }
}

#[test]
fn a_sealed_code_with_a_key_that_follows_is_read_with_its_words() {
    let follows = Follows::sign(&key(1), &key(2).verify_key());
    let (_, programme) = &programmes()[0];
    let handed = HandOver::sign(programme.as_bytes(), &key(2), Some(follows)).unwrap();
    // Not drawn by chance: some of the words that can be ("code", "image") describe the drawing itself.
    let words = SpokenWords::parse("walnut zebra jaguar oxygen").unwrap();
    let told: Vec<String> = words.words().map(str::to_owned).collect();
    let code = code(&handed, &Way::Sealed(words), &SAYS, &OsRandom).unwrap();
    assert!(told.iter().all(|word| !code.svg.contains(word.as_str())), "spoken, not drawn");
    let (_, text) = decoded(&code.svg);
    let typed = SpokenWords::parse(&told.join(" ")).unwrap();
    let came = HandOver::from_link(&text, Some(&typed)).unwrap();
    assert_eq!(came.text(), handed.text());
    assert_eq!(came.follows(), Some(key(1).verify_key()));
}

/// The core's two capacities against the tables of the encoder, to the character.
#[test]
fn a_code_holds_what_the_published_table_says_and_not_one_character_more() {
    for (level, most) in [(ECL::M, Correction::Medium.characters()), (ECL::L, LINK_MOST)] {
        let of = |characters: usize| {
            let text = "A".repeat(characters);
            let built = QRBuilder::new(text).mode(Mode::Alphanumeric).ecl(level).build();
            version(&built.unwrap()).unwrap()
        };
        assert_eq!((of(most), of(most + 1)), (25, 26));
    }
    assert_eq!(draw("A".repeat(LINK_MOST), &SAYS).unwrap().version, 25);
    let error = draw("A".repeat(LINK_MOST + 1), &SAYS).err().unwrap();
    assert_eq!(error, HandOverError::TooLarge { characters: LINK_MOST + 1 });
}

#[test]
fn a_drawing_has_a_name_and_no_word_of_it_is_taken_for_a_mark() {
    let code = draw("FROND:AAAA".to_owned(), &SAYS).unwrap();
    assert!(code.svg.contains("<title id=\"code-title\">A &lt;code&gt;</title>"));
    assert!(code.svg.contains("Of a &quot;plan&quot; &amp; more</desc>"));
    assert!(!code.svg.contains("style="));
}
