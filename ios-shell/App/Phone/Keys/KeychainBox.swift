// The phone's own place for keys: the Keychain. Decides how a key lies there and how it seals (AES-256-GCM); leaves to FrondHome's
// `Keys` which key is for what, when it is made and when it is destroyed. There is no Keychain where the tests run, so these
// lines have run nowhere yet; everything else about keys is tested with another `SecretBox`.
//
// A key opens only while the phone is unlocked, and never on another phone: `kSecAttrAccessibleWhenUnlockedThisDeviceOnly`
// keeps it out of backups to other devices, and it is not synchronised
// (https://developer.apple.com/documentation/security/ksecattraccessiblewhenunlockedthisdeviceonly). It is not bound to a
// face or a finger: whoever shares a life often has one in the phone. The app's own code is a lock beside this key.
//
// What the Keychain keeps outlives the app when it is removed. Such a key opens nothing any more: the diary's files are gone
// with the app, and the next diary destroys every key but its own.
import CryptoKit
import Foundation
import FrondHome
import Security

struct KeychainBox: SecretBox {
    func make(_ name: String) throws(BoxTrouble) {
        let key = SymmetricKey(size: .bits256)
        var item = place(of: name)
        item[kSecAttrAccessible] = kSecAttrAccessibleWhenUnlockedThisDeviceOnly
        item[kSecValueData] = key.withUnsafeBytes { Data($0) }
        try done(SecItemAdd(item as CFDictionary, nil))
    }

    func seal(_ name: String, plain: Data, beside: Data) throws(BoxTrouble) -> Data {
        let key = try key(name)
        // CryptoKit chooses a nonce of its own each time; it stands before what is sealed.
        guard let box = try? AES.GCM.seal(plain, using: key, authenticating: beside), let sealed = box.combined else {
            throw BoxTrouble.refused
        }
        return sealed
    }

    func open(_ name: String, sealed: Data, beside: Data) throws(BoxTrouble) -> Data {
        let key = try key(name)
        guard let box = try? AES.GCM.SealedBox(combined: sealed), let plain = try? AES.GCM.open(box, using: key, authenticating: beside)
        else { throw BoxTrouble.garbled }
        return plain
    }

    func names() throws(BoxTrouble) -> Set<String> {
        var ask = kind
        ask[kSecMatchLimit] = kSecMatchLimitAll
        ask[kSecReturnAttributes] = true
        var found: CFTypeRef?
        let status = SecItemCopyMatching(ask as CFDictionary, &found)
        if status == errSecItemNotFound { return [] }
        try done(status)
        guard let items = found as? [[CFString: Any]] else { throw BoxTrouble.refused }
        return Set(items.compactMap { $0[kSecAttrAccount] as? String })
    }

    func destroy(_ name: String) throws(BoxTrouble) {
        let status = SecItemDelete(place(of: name) as CFDictionary)
        if status != errSecItemNotFound { try done(status) }
    }

    private func key(_ name: String) throws(BoxTrouble) -> SymmetricKey {
        var ask = place(of: name)
        ask[kSecReturnData] = true
        var found: CFTypeRef?
        let status = SecItemCopyMatching(ask as CFDictionary, &found)
        // Only a name that is not there says that a key is gone. A locked phone refuses: it may work another time.
        if status == errSecItemNotFound { throw BoxTrouble.gone }
        try done(status)
        guard var bytes = found as? Data, bytes.count == 32 else { throw BoxTrouble.refused }
        defer { bytes.resetBytes(in: bytes.startIndex..<bytes.endIndex) }
        return SymmetricKey(data: bytes)
    }

    /// Everything of ours: a plain password item, named after the app and nothing else.
    private var kind: [CFString: Any] {
        [
            kSecClass: kSecClassGenericPassword,
            kSecAttrService: "frond.home",
            kSecAttrSynchronizable: false,
            kSecUseDataProtectionKeychain: true,
        ]
    }

    private func place(of name: String) -> [CFString: Any] {
        var item = kind
        item[kSecAttrAccount] = name
        return item
    }

    private func done(_ status: OSStatus) throws(BoxTrouble) {
        if status != errSecSuccess { throw BoxTrouble.refused }
    }
}
