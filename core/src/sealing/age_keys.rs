//! Keys of age files: the public one a file is sealed to, the secret one that opens it.
//!
//! Only X25519 keys; keys of other kinds are refused with a sentence. Who holds which key is
//! decided elsewhere.

use age::secrecy::ExposeSecret;
use bech32::{Bech32, Hrp};
use std::fmt;
use std::str::FromStr;
use zeroize::Zeroizing;

/// A public key of age, `age1...`: whoever holds its secret half can open what is sealed to it.
#[derive(Clone, PartialEq, Eq)]
pub struct Recipient(pub(super) age::x25519::Recipient);

/// Why a text is no public key.
#[derive(Debug, Clone, Copy, PartialEq, Eq, thiserror::Error)]
pub enum RecipientError {
    /// A secret key where a public one belongs.
    #[error(
        "this is a secret key, which must stay with its owner; use the line that begins with age1"
    )]
    Secret,
    /// A key of a kind this program does not seal to.
    #[error("this kind of key is not supported; use an age key, a line that begins with age1")]
    OtherKind,
    /// Not a key, or a key with a slip in it.
    #[error("this is no age public key, or a letter of it is wrong; copy the whole line again")]
    Wrong,
}

impl Recipient {
    /// Reads a public key; spaces around it do not matter.
    ///
    /// # Errors
    /// [`RecipientError`] says what the text is instead.
    pub fn parse(text: &str) -> Result<Self, RecipientError> {
        let text = text.trim();
        let low = Zeroizing::new(text.to_ascii_lowercase());
        if low.starts_with("age-secret-key-") || low.starts_with("age-plugin-") {
            return Err(RecipientError::Secret);
        }
        if low.starts_with("ssh-") || (low.starts_with("age1") && low.rfind('1') != Some(3)) {
            return Err(RecipientError::OtherKind);
        }
        age::x25519::Recipient::from_str(text).map(Self).map_err(|_| RecipientError::Wrong)
    }
}

impl fmt::Display for Recipient {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        self.0.fmt(f)
    }
}

impl fmt::Debug for Recipient {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "Recipient({})", self.0)
    }
}

impl FromStr for Recipient {
    type Err = RecipientError;
    fn from_str(text: &str) -> Result<Self, RecipientError> {
        Self::parse(text)
    }
}

/// A secret key of age: opens what was sealed to its [`recipient`](Identity::recipient). Wiped when
/// dropped, never printed.
#[derive(Clone)]
pub struct Identity(pub(super) age::x25519::Identity);

/// Why a text is no secret key. Never holds the text.
#[derive(Debug, Clone, Copy, PartialEq, Eq, thiserror::Error)]
pub enum IdentityError {
    /// A public key where a secret one belongs.
    #[error("this is a public key and opens nothing; use the line that begins with AGE-SECRET-KEY")]
    Public,
    /// More than one key.
    #[error("there is more than one secret key here; give them one at a time")]
    Several,
    /// Not a key, or a key with a slip in it.
    #[error("this is no age secret key, or a letter of it is wrong; copy the whole line again")]
    Wrong,
}

impl Identity {
    /// Reads `AGE-SECRET-KEY-1...`, alone or as a key file with remarks (`#`) and empty lines.
    ///
    /// # Errors
    /// [`IdentityError`] says what the text is instead.
    pub fn parse(text: &str) -> Result<Self, IdentityError> {
        let mut lines =
            text.lines().map(str::trim).filter(|l| !l.is_empty() && !l.starts_with('#'));
        let line = lines.next().ok_or(IdentityError::Wrong)?;
        if lines.next().is_some() {
            return Err(IdentityError::Several);
        }
        if line.starts_with("age1") {
            return Err(IdentityError::Public);
        }
        age::x25519::Identity::from_str(line).map(Self).map_err(|_| IdentityError::Wrong)
    }

    /// The identity of 32 secret bytes.
    pub(super) fn from_secret(secret: &[u8; 32]) -> Result<Self, IdentityError> {
        let hrp = Hrp::parse("age-secret-key-").map_err(|_| IdentityError::Wrong)?;
        let text = bech32::encode_upper::<Bech32>(hrp, secret).map(Zeroizing::new);
        Self::parse(&text.map_err(|_| IdentityError::Wrong)?)
    }

    /// The secret as text, `AGE-SECRET-KEY-1...`, for the person to keep.
    #[must_use]
    pub fn to_text(&self) -> Zeroizing<String> {
        Zeroizing::new(self.0.to_string().expose_secret().to_owned())
    }

    /// The public half, to be handed on.
    #[must_use]
    pub fn recipient(&self) -> Recipient {
        Recipient(self.0.to_public())
    }
}

impl fmt::Debug for Identity {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str("Identity(secret)")
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn invented() -> Identity {
        Identity::from_secret(&[7; 32]).unwrap()
    }

    #[test]
    fn keys_come_back_from_their_text() {
        let identity = invented();
        let text = identity.to_text();
        assert!(text.starts_with("AGE-SECRET-KEY-1"));
        let file = format!("# invented\n\n  {}\n", text.as_str());
        assert_eq!(Identity::parse(&file).unwrap().recipient(), identity.recipient());
        let public = identity.recipient().to_string();
        assert_eq!(Recipient::parse(&format!(" {public}\n")).unwrap(), identity.recipient());
    }

    #[test]
    fn a_wrong_text_is_named_for_what_it_is() {
        let public = invented().recipient().to_string();
        let secret = invented().to_text();
        assert_eq!(Recipient::parse(&secret), Err(RecipientError::Secret));
        assert_eq!(Identity::parse(&public).unwrap_err(), IdentityError::Public);
        let two = format!("{}\n{}", secret.as_str(), secret.as_str());
        assert_eq!(Identity::parse(&two).unwrap_err(), IdentityError::Several);
        assert_eq!(Identity::parse("# only a remark").unwrap_err(), IdentityError::Wrong);
        for other in ["ssh-ed25519 AAAA", "age1pq1qqqqqq", "age1yubikey1qqqq"] {
            assert_eq!(Recipient::parse(other), Err(RecipientError::OtherKind), "{other}");
        }
        for wrong in ["", "age1", "hello", &public[..public.len() - 1]] {
            assert_eq!(Recipient::parse(wrong), Err(RecipientError::Wrong), "{wrong}");
        }
    }

    #[test]
    fn any_single_wrong_letter_of_a_key_is_noticed() {
        let public = invented().recipient().to_string();
        let secret = invented().to_text();
        for at in 0..public.len() {
            let mut text = public.as_bytes().to_vec();
            text[at] = if text[at] == b'q' { b'p' } else { b'q' };
            assert!(Recipient::parse(std::str::from_utf8(&text).unwrap()).is_err(), "letter {at}");
        }
        for at in 0..secret.len() {
            let mut text = secret.as_bytes().to_vec();
            text[at] = if text[at] == b'Q' { b'P' } else { b'Q' };
            assert!(Identity::parse(std::str::from_utf8(&text).unwrap()).is_err(), "letter {at}");
        }
    }

    #[test]
    fn a_secret_key_does_not_print() {
        assert_eq!(format!("{:?}", invented()), "Identity(secret)");
    }
}
