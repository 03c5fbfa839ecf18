import Foundation

@testable import FrondHome

/// A place for secrets in memory, as the Keychain is none here.
final class MemoryBox: SecretBox, @unchecked Sendable {
    private let one = NSLock()
    private var kept: [String: Data] = [:]
    private var refused = false
    private var stuck: Set<String> = []

    /// Whether it does nothing at all, as the Keychain of a locked phone.
    var refuses: Bool {
        get { one.withLock { refused } }
        set { one.withLock { refused = newValue } }
    }

    /// Names that cannot be destroyed.
    var cannotDestroy: Set<String> {
        get { one.withLock { stuck } }
        set { one.withLock { stuck = newValue } }
    }

    func keep(_ secret: Data, under name: String) throws(BoxTrouble) {
        if refuses { throw .refused }
        one.withLock { kept[name] = secret }
    }

    func secret(under name: String) throws(BoxTrouble) -> Data {
        if refuses { throw .refused }
        guard let secret = one.withLock({ kept[name] }) else { throw .gone }
        return secret
    }

    func names() throws(BoxTrouble) -> Set<String> {
        if refuses { throw .refused }
        return one.withLock { Set(kept.keys) }
    }

    func destroy(_ name: String) throws(BoxTrouble) {
        if refuses || cannotDestroy.contains(name) { throw .refused }
        one.withLock { kept[name] = nil }
    }

    /// What is there, for a test to look at.
    var all: [String: Data] { one.withLock { kept } }
}

/// A key keeper that throws something of its own kind, with something to say, while asked to.
final class Throwing: KeyKeeper, @unchecked Sendable {
    struct Inside: Error, CustomStringConvertible {
        let description = "invented-inside of the key keeper"
    }

    private let inside: PhoneKeys
    private let one = NSLock()
    private var throwing = false

    init(_ inside: PhoneKeys) { self.inside = inside }

    var failing: Bool {
        get { one.withLock { throwing } }
        set { one.withLock { throwing = newValue } }
    }

    func wrap(key: Data) throws -> Data {
        if failing { throw Inside() }
        return try inside.wrap(key: key)
    }

    func unwrap(wrap: Data) throws -> Data {
        if failing { throw Inside() }
        return try inside.unwrap(wrap: wrap)
    }

    func keepOnly(wrap: Data) throws { try inside.keepOnly(wrap: wrap) }

    func forget() throws { try inside.forget() }

    func keepMark(diary: Data, mark: Data) throws { try inside.keepMark(diary: diary, mark: mark) }

    func keptMark(diary: Data) throws -> Data? { try inside.keptMark(diary: diary) }

    func forgetMark(diary: Data) throws { try inside.forgetMark(diary: diary) }
}
