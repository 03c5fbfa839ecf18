// Made by tools/look from bindings/look/tokens.json; change it there, and make this anew. A check compares the two.

/// The project's tokens, in points.
enum Tokens {
    /// A colour in the light and in the dark, as 0xRRGGBB.
    enum Colour: CaseIterable {
        case ground, surface, text, quiet, edge, hairline, action, onAction, soft, onSoft, note, onNote, noteEdge, focus

        var light: UInt32 {
            switch self {
            case .ground: 0xf6f4ee
            case .surface: 0xfffefb
            case .text: 0x22302a
            case .quiet: 0x4a5a52
            case .edge: 0x6f7f77
            case .hairline: 0xdcd9cd
            case .action: 0x2c5f50
            case .onAction: 0xffffff
            case .soft: 0xe2ebe4
            case .onSoft: 0x1d3d33
            case .note: 0xf3e8cf
            case .onNote: 0x3d3218
            case .noteEdge: 0x8a6f2d
            case .focus: 0x1b4b8f
            }
        }

        var dark: UInt32 {
            switch self {
            case .ground: 0x131917
            case .surface: 0x1c2421
            case .text: 0xe6ebe7
            case .quiet: 0xb4c0b9
            case .edge: 0x84958c
            case .hairline: 0x33403a
            case .action: 0xa5d3bf
            case .onAction: 0x0f211a
            case .soft: 0x25352e
            case .onSoft: 0xcfe6da
            case .note: 0x352d1a
            case .onNote: 0xf0e2c0
            case .noteEdge: 0xb99a55
            case .focus: 0x9cc3ff
            }
        }
    }

    /// The size of letters before the person's own size of text.
    enum Letter {
        static let small: Double = 15
        static let body: Double = 17
        static let lead: Double = 19
        static let heading: Double = 20
        static let title: Double = 28
        static let large: Double = 40
    }

    /// From one line of a sentence to the next, as a multiple of its letters.
    static let lineHeight: Double = 1.55

    /// Room between things.
    enum Space {
        static let s1: Double = 4
        static let s2: Double = 8
        static let s3: Double = 12
        static let s4: Double = 16
        static let s5: Double = 24
        static let s6: Double = 36
        static let s7: Double = 56
    }

    /// Round corners.
    enum Radius {
        static let small: Double = 6
        static let card: Double = 14
        static let press: Double = 24
    }

    /// The least size of what is pressed, in both directions.
    enum Target {
        static let least: Double = 44
        static let press: Double = 52
    }

    /// How wide a line of text may become.
    static let measure: Double = 544
}
