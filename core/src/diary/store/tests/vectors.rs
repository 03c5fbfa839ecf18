//! Published numbers for every primitive the diary stands on, through the diary's own calls where
//! it has one. Each was also recomputed with an independent library (Python: PyNaCl 1.6.2 over
//! libsodium, `cryptography` over OpenSSL) and agreed; CRC-32C by a table-free computation below.

use crate::diary::store::seal::SealKey;
use argon2::{Algorithm, Argon2, AssociatedData, ParamsBuilder, Version};
use chacha20poly1305::aead::{Aead, KeyInit, Payload};
use chacha20poly1305::{ChaCha20Poly1305, Nonce};
use data_encoding::HEXLOWER_PERMISSIVE;

fn hex(text: &str) -> Vec<u8> {
    HEXLOWER_PERMISSIVE.decode(text.replace(' ', "").as_bytes()).unwrap()
}

const SUNSCREEN: &[u8] =
    b"Ladies and Gentlemen of the class of '99: If I could offer you only one \
tip for the future, sunscreen would be it.";

#[test]
fn xchacha20_poly1305() {
    // draft-irtf-cfrg-xchacha-03, appendix A.3.1.
    let key: Vec<u8> = (0x80..0xa0).collect();
    let nonce: Vec<u8> = (0x40..0x58).collect();
    let bound = hex("50515253c0c1c2c3c4c5c6c7");
    let mut text = SUNSCREEN.to_vec();
    let key = SealKey::from_bytes(&key).unwrap();
    let tag = key.seal(nonce.clone().try_into().unwrap(), &bound, &mut text).unwrap();
    assert_eq!(tag.to_vec(), hex("c0875924c1c7987947deafd8780acf49"));
    assert_eq!(text[..16], hex("bd6d179d3e83d43b9576579493c0e939"));
    assert_eq!(text[112..], hex("b52e"));
    key.open(nonce.clone().try_into().unwrap(), &bound, &mut text, tag).unwrap();
    assert_eq!(text, SUNSCREEN);
    assert!(key.open(nonce.try_into().unwrap(), &bound, &mut text, [0; 16]).is_err());
}

#[test]
fn chacha20_poly1305() {
    // RFC 8439, section 2.8.2. The diary uses only the extended form above; this is its core.
    let key: Vec<u8> = (0x80..0xa0).collect();
    let nonce = Nonce::try_from(hex("070000004041424344454647").as_slice()).unwrap();
    let bound = hex("50515253c0c1c2c3c4c5c6c7");
    let sealed = ChaCha20Poly1305::new_from_slice(&key)
        .unwrap()
        .encrypt(&nonce, Payload { msg: SUNSCREEN, aad: &bound })
        .unwrap();
    assert_eq!(sealed[..16], hex("d31a8d34648e60db7b86afbc53ef7ec2"));
    assert_eq!(sealed[SUNSCREEN.len()..], hex("1ae10b594f09e26a7e902ecbd0600691"));
}

#[test]
fn argon2id() {
    // RFC 9106, section 5.3.
    let params = ParamsBuilder::new()
        .m_cost(32)
        .t_cost(3)
        .p_cost(4)
        .output_len(32)
        .data(AssociatedData::new(&[4; 12]).unwrap())
        .build()
        .unwrap();
    let mut tag = [0; 32];
    Argon2::new_with_secret(&[3; 8], Algorithm::Argon2id, Version::V0x13, params)
        .unwrap()
        .hash_password_into(&[1; 32], &[2; 16], &mut tag)
        .unwrap();
    let published = hex("0d640df58d78766c08c037a34a8b53c9d01ef0452d75b65eb52520e96b01e659");
    assert_eq!(tag.to_vec(), published);
}

#[test]
fn hkdf_sha256() {
    // RFC 5869, appendix A.1 (test case 1).
    let salt: Vec<u8> = (0..=0x0c).collect();
    let info: Vec<u8> = (0xf0..=0xf9).collect();
    let mut out = [0; 42];
    hkdf::Hkdf::<sha2::Sha256>::new(Some(&salt), &[0x0b; 22]).expand(&info, &mut out).unwrap();
    let published = hex("3cb25f25faacd57a90434f64d0362f2a2d2d0a90cf1a5a4c5db02d56ecc4c5bf\
                         34007208d5b887185865");
    assert_eq!(out.to_vec(), published);
}

#[test]
fn crc32c_checksums() {
    // RFC 3720, appendix B.4, where the bytes are listed in the order they are sent.
    let up: Vec<u8> = (0..32).collect();
    let down: Vec<u8> = (0..32).rev().collect();
    let command = hex("01c00000 00000000 00000000 00000000 14000000 00000400 00000014 00000018 \
                       28000000 00000000 02000000 00000000");
    let published: [(&[u8], &str); 5] = [
        (&[0; 32], "aa36918a"),
        (&[0xff; 32], "43aba862"),
        (&up, "4e79dd46"),
        (&down, "5cdb3f11"),
        (&command, "563a96d9"),
    ];
    for (bytes, sum) in published {
        assert_eq!(crc32c::crc32c(bytes).to_le_bytes().to_vec(), hex(sum));
        assert_eq!(crc32c::crc32c(bytes), bit_by_bit(bytes));
    }
}

/// CRC-32C straight from its polynomial, as a second opinion.
fn bit_by_bit(bytes: &[u8]) -> u32 {
    !bytes.iter().fold(u32::MAX, |sum, byte| {
        (0..8).fold(sum ^ u32::from(*byte), |s, _| {
            if s & 1 == 1 { (s >> 1) ^ 0x82f6_3b78 } else { s >> 1 }
        })
    })
}
