//! Signatures against RFC 8032, and what they cover.

use super::*;
use data_encoding::HEXLOWER;

/// RFC 8032, section 7.1, tests 1 to 3: seed, public key, message, signature. Written down from memory; an
/// independent library (Python's cryptography over OpenSSL) gives the same keys and signatures.
const RFC_8032: [[&str; 4]; 3] = [
    [
        "9d61b19deffd5a60ba844af492ec2cc44449c5697b326919703bac031cae7f60",
        "d75a980182b10ab7d54bfed3c964073a0ee172f3daa62325af021a68f707511a",
        "",
        "e5564300c360ac729086e2cc806e828a84877f1eb8e5d974d873e065224901555fb8821590a33bacc61e39701cf9b46bd25bf5f0595bbe24655141438e7a100b",
    ],
    [
        "4ccd089b28ff96da9db6c346ec114e0f5b8a319f35aba624da8cf6ed4fb8a6fb",
        "3d4017c3e843895a92b70aa74d1b7ebc9c982ccf2ec4968cc0cd55f12af4660c",
        "72",
        "92a009a9f0d4cab8720e820b5f642540a2b27b5416503f8fb3762223ebdb69da085ac1e43e15996e458f3613d0f11d8c387b2eaeb4302aeeb00d291612bb0c00",
    ],
    [
        "c5aa8df43f9f837bedb7442f31dcb7b166d38535076f094b85ce3a2e0b4458f7",
        "fc51cd8e6218a1a38da47ed00230f0580816ed13ba3303ac5deb911548908025",
        "af82",
        "6291d657deec24024827e69c3abe01a30ce548a284743a445e3680d7db5ac3ac18ff9b538d16f290ae67f760984dc6594a7c15e9716ed28dc027beceea1ec40a",
    ],
];

const HERE: Context = Context::new("frond test 1");

fn key(byte: u8) -> SigningKey {
    SigningKey::from_seed(&Zeroizing::new([byte; 32]))
}

/// The raw primitive: our signatures cover more than the bare message.
#[test]
fn the_primitive_gives_what_rfc_8032_prints() {
    for [seed, public, message, signature] in RFC_8032 {
        let bytes = |hex: &str| HEXLOWER.decode(hex.as_bytes()).unwrap();
        let key = SigningKey::from_seed(&Zeroizing::new(bytes(seed).try_into().unwrap()));
        assert_eq!(HEXLOWER.encode(&key.verify_key().to_bytes()), public);
        let signed = key.0.sign(&bytes(message));
        assert_eq!(HEXLOWER.encode(&signed.to_bytes()), signature);
        key.verify_key().0.verify_strict(&bytes(message), &signed).unwrap();
    }
}

/// Stored format: what is covered, spelled out by hand.
#[test]
fn a_signature_covers_length_context_and_bytes() {
    let signature = key(1).sign(HERE, b"{}");
    let mut message = vec![12, 0, 0, 0, 0, 0, 0, 0];
    message.extend_from_slice(b"frond test 1{}");
    key(1).verify_key().0.verify_strict(&message, &signature.0).unwrap();
}

#[test]
fn only_the_same_bytes_context_and_key_verify() {
    let signature = key(1).sign(HERE, b"invented");
    let public = key(1).verify_key();
    assert_eq!(public.verify(HERE, b"invented", &signature).unwrap().bytes(), b"invented");
    assert!(key(2).verify_key().verify(HERE, b"invented", &signature).is_err());
    assert!(public.verify(Context::new("frond test"), b"invented", &signature).is_err());
    // Moving the border between context and bytes gives another message.
    assert!(public.verify(Context::new("frond test 1i"), b"nvented", &signature).is_err());
    for at in 0..8 {
        let mut altered = *b"invented";
        altered[at] ^= 1;
        assert_eq!(public.verify(HERE, &altered, &signature).unwrap_err(), NotGenuine);
    }
    for bit in 0..512 {
        let mut altered = signature.to_bytes();
        altered[bit / 8] ^= 1 << (bit % 8);
        let altered = Signature::from_bytes(&altered);
        assert!(public.verify(HERE, b"invented", &altered).is_err(), "bit {bit}");
    }
}

#[test]
fn texts_come_back_and_slips_are_refused() {
    let public = key(3).verify_key();
    let signature = key(3).sign(HERE, b"");
    assert_eq!(VerifyKey::parse(&format!(" {}\n", public.to_text())).unwrap(), public);
    assert_eq!(Signature::parse(&signature.to_text()).unwrap(), signature);
    assert_eq!(VerifyKey::parse(&signature.to_text()), Err(SigningTextError::Key));
    assert_eq!(Signature::parse(&public.to_text()), Err(SigningTextError::Signature));
    assert_eq!(VerifyKey::parse(""), Err(SigningTextError::Key));
    assert_eq!(Signature::parse(&"A".repeat(1 << 20)), Err(SigningTextError::Signature));
}

/// A key of small order, for which one signature fits almost any message: the neutral element.
#[test]
fn a_weak_key_is_refused() {
    let mut neutral = [0; 32];
    neutral[0] = 1;
    assert_eq!(VerifyKey::from_bytes(&neutral), Err(SigningTextError::Key));
}

#[test]
fn a_secret_key_does_not_print_and_comes_back_from_its_seed() {
    assert_eq!(format!("{:?}", key(4)), "SigningKey(secret)");
    assert_eq!(SigningKey::from_seed(&key(4).seed()).verify_key(), key(4).verify_key());
}
