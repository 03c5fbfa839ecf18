// The phone's own place for secrets: the Keychain. Decides only how one lies there; leaves to FrondHome's `Keys` which secret is
// for what, when it is kept and when it is destroyed. There is no Keychain where the tests run, so these lines have run nowhere
// yet; everything else about keys is tested with another `SecretBox`.
//
// A secret can be had only while the phone is unlocked, and never on another phone:
// `kSecAttrAccessibleWhenUnlockedThisDeviceOnly` keeps it from being moved with a backup, and it is not synchronised
// (https://developer.apple.com/documentation/security/ksecattraccessiblewhenunlockedthisdeviceonly). It is not bound to a
// face or a finger: whoever shares a life often has one in the phone. The app's own code is a lock beside it, stretched and
// sealed in the core.
//
// What the Keychain keeps outlives the app when it is removed. Such a secret opens nothing any more, because the diary's files
// go with the app; and the next diary destroys every one but its own.
import Foundation
import FrondHome
import Security

struct KeychainBox: SecretBox {
    func keep(_ secret: Data, under name: String) throws(BoxTrouble) {
        var item = place(of: name)
        item[kSecAttrAccessible] = kSecAttrAccessibleWhenUnlockedThisDeviceOnly
        item[kSecValueData] = secret
        try done(SecItemAdd(item as CFDictionary, nil))
    }

    func secret(under name: String) throws(BoxTrouble) -> Data {
        var ask = place(of: name)
        ask[kSecReturnData] = true
        var found: CFTypeRef?
        let status = SecItemCopyMatching(ask as CFDictionary, &found)
        // Only a name that is not there says that a secret is gone. A locked phone refuses: it may work another time.
        if status == errSecItemNotFound { throw .gone }
        try done(status)
        guard let secret = found as? Data else { throw .refused }
        return secret
    }

    func names() throws(BoxTrouble) -> Set<String> {
        var ask = kind
        ask[kSecMatchLimit] = kSecMatchLimitAll
        ask[kSecReturnAttributes] = true
        var found: CFTypeRef?
        let status = SecItemCopyMatching(ask as CFDictionary, &found)
        if status == errSecItemNotFound { return [] }
        try done(status)
        guard let items = found as? [[CFString: Any]] else { throw .refused }
        return Set(items.compactMap { $0[kSecAttrAccount] as? String })
    }

    func destroy(_ name: String) throws(BoxTrouble) {
        let status = SecItemDelete(place(of: name) as CFDictionary)
        if status != errSecItemNotFound { try done(status) }
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
        if status != errSecSuccess { throw .refused }
    }
}
