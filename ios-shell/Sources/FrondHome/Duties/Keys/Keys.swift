// Which secret of the phone opens the diary. Decides that every wrap has a new random name, that the wrap carries that name and
// nothing else, and which secrets are destroyed when; leaves to `SecretBox` how a secret is kept and to the core what is wrapped.
//
// The key itself lies in the phone's own store, which ties it to this phone and seals it with the phone's lock. A wrap is one
// byte 1, one byte for the length of the name, and the name.
import Foundation

struct Keys: Sendable {
    private let box: any SecretBox
    private let random: @Sendable () -> UInt64

    init(box: any SecretBox, random: @escaping @Sendable () -> UInt64 = { UInt64.random(in: .min ... .max) }) {
        self.box = box
        self.random = random
    }

    /// Keeps it under a new name. Older ones stay until `keepOnly` or `forget`.
    func wrap(_ key: Data) throws(BoxTrouble) -> Data {
        let name = newName()
        try box.keep(key, under: name)
        return Data([Keys.form, UInt8(name.utf8.count)]) + Data(name.utf8)
    }

    /// Gives what `wrap` kept.
    func unwrap(_ wrap: Data) throws(BoxTrouble) -> Data { try box.secret(under: name(in: wrap)) }

    /// From now on only this wrap has to open: every other secret of ours is destroyed. Where its own is not there nothing is
    /// destroyed at all, because then this wrap is not the one that opens the diary.
    func keepOnly(_ wrap: Data) throws(BoxTrouble) {
        let kept = try name(in: wrap)
        let ours = try ours()
        guard ours.contains(kept) else { throw .gone }
        try destroy(ours.subtracting([kept]))
    }

    /// Destroys every secret of ours: the diary was erased.
    func forget() throws(BoxTrouble) { try destroy(ours()) }

    private func ours() throws(BoxTrouble) -> Set<String> { try box.names().filter { $0.hasPrefix(Keys.own) } }

    /// One that cannot be destroyed does not keep the others from it.
    private func destroy(_ names: Set<String>) throws(BoxTrouble) {
        var failed: BoxTrouble?
        for name in names {
            do { try box.destroy(name) } catch { failed = error }
        }
        if let failed { throw failed }
    }

    /// Random, so that a name tells nothing and no two diaries share one.
    private func newName() -> String { Keys.own + hex(random()) + hex(random()) }

    private func hex(_ number: UInt64) -> String {
        let digits = String(number, radix: 16)
        return String(repeating: "0", count: 16 - digits.count) + digits
    }

    private func name(in wrap: Data) throws(BoxTrouble) -> String {
        let bytes = [UInt8](wrap)
        let length = Keys.own.utf8.count + 32
        guard bytes.count == 2 + length, bytes[0] == Keys.form, bytes[1] == UInt8(length) else { throw .garbled }
        let name = String(decoding: bytes[2...], as: UTF8.self)
        let isHex = name.dropFirst(Keys.own.count).allSatisfy { $0.isASCII && $0.isHexDigit && !$0.isUppercase }
        guard name.hasPrefix(Keys.own), isHex else { throw .garbled }
        return name
    }

    private static let form: UInt8 = 1
    private static let own = "k."
}
