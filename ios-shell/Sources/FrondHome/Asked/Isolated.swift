// Words of another direction than the screen's, such as a note in Arabic on an English screen. Decides which lines keep to
// themselves; leaves to the phone how they are drawn.

/// The text with each line that begins in the other direction isolated (Unicode Standard Annex 9, first strong isolate): its own
/// marks stay on its own side, and it stands where the lines of the screen stand. Nothing else is changed.
public func isolated(_ text: String, rightToLeft: Bool) -> String {
    guard text.unicodeScalars.contains(where: { $0.isRightToLeft != rightToLeft && $0.isStrong }) else { return text }
    return text.split(separator: "\n", omittingEmptySubsequences: false)
        .map { line in
            // An isolate ends with its line, so each has its own.
            let first = line.unicodeScalars.first(where: \.isStrong)
            return first.map { $0.isRightToLeft == rightToLeft } ?? true ? String(line) : "\u{2068}\(line)\u{2069}"
        }
        .joined(separator: "\n")
}

extension Unicode.Scalar {
    /// It has a direction of its own.
    fileprivate var isStrong: Bool { properties.isAlphabetic || isRightToLeft }

    /// It stands in a block whose characters go from right to left (Unicode Standard Annex 9, table of default bidi classes:
    /// Hebrew, Arabic and what lies beside them, their forms, and the scripts from U+10800 and U+1E800).
    fileprivate var isRightToLeft: Bool {
        switch value {
        case 0x200F, 0x0590...0x08FF, 0xFB1D...0xFDFF, 0xFE70...0xFEFF, 0x10800...0x10FFF, 0x1E800...0x1EFFF:
            // Their digits and marks have none.
            properties.isAlphabetic || value == 0x200F
        default: false
        }
    }
}
