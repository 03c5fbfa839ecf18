// Only declarations, from https://developer.apple.com/documentation/uniformtypeidentifiers. Nothing of it is ever run or shipped.

public struct UTType: Hashable, Sendable {
    public let identifier: String
    public static let data = UTType(identifier: "")
    public static let json = UTType(identifier: "")
    public static let utf8PlainText = UTType(identifier: "")
}
