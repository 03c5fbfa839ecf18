import Foundation

/// A file that the app left in its folders. What the diary's own files hold is read byte by byte in `tests/src/sweep`.
struct Left {
    let name: String
    let bytes: Data

    /// Every file there may be, from the app's folders on: the diary's, and beside it what README.md names.
    static var ours: [Regex<Substring>] {
        [
            /support\/diary\/(?:keys|journal|snapshot|running|lock|renew)/,
            /support\/diary\/(?:backups\/[0-9]+|aside\/[a-z]+-[0-9]+)/,
            /support\/diary\.tries/,
            /support\/(?:times|language|left)/,
            /support\/marks\/[0-9a-f]{32}/,
        ]
    }

    /// Words of the field in both languages; what a reminder may say is none of them.
    static let words = [
        "pelvic", "vagin", "dilator", "dilatador", "trainer", "session", "discomfort", "molestia", "practice", "breath",
        "respira", "bleeding", "sangrado", "clinic", "programme", "programa", "therap", "terapeuta", "rating", "numb_saddle",
        "feels_ready", "schedule", "invented",
    ]

    static func below(_ folder: URL) throws -> [Left] {
        try FileManager.default.subpathsOfDirectory(atPath: folder.path).compactMap { name in
            let place = folder.appendingPathComponent(name)
            var isFolder: ObjCBool = false
            let there = FileManager.default.fileExists(atPath: place.path, isDirectory: &isFolder)
            guard there, !isFolder.boolValue else { return nil }
            return Left(name: name, bytes: try Data(contentsOf: place))
        }
    }

    /// In UTF-8 and UTF-16, plain, as hexadecimal and as base64 in each of its three positions.
    static func writings(_ text: String) -> [Data] {
        let little = Data(text.utf16.flatMap { [UInt8($0 & 0xff), UInt8($0 >> 8)] })
        let big = Data(text.utf16.flatMap { [UInt8($0 >> 8), UInt8($0 & 0xff)] })
        let plain = [Data(text.utf8), little, big]
        return plain + plain.flatMap { bytes -> [Data] in
            let hex = bytes.map { byte in
                let digits = String(byte, radix: 16)
                return digits.count == 1 ? "0" + digits : digits
            }.joined()
            let coded = (0...2).map { before -> String in
                let whole = Array((Data(count: before) + bytes).base64EncodedString())
                return String(whole[((before * 8 + 5) / 6)..<((before + bytes.count) * 8 / 6)])
            }
            return (coded + [hex, hex.uppercased()]).map { Data($0.utf8) }
        }
    }

    /// Which of these texts stands in the file or in its name.
    func found(_ texts: [String]) -> [String] {
        let lower = Data(bytes.map { (0x41...0x5a).contains($0) ? $0 + 0x20 : $0 })
        let within = [bytes, lower, Data(name.lowercased().utf8)]
        return texts.filter { text in
            (Left.writings(text) + Left.writings(text.lowercased())).contains { writing in
                within.contains { $0.range(of: writing) != nil }
            }
        }.map { "\(name): \($0)" }
    }
}
