// What the core asks of the phone about keys and marks. Decides only which failure is which; whatever is thrown beneath ends
// here, so that no text of it crosses into the core, a log or a screen.
//
// Copies of a key that the runtime or the border made on the way are out of reach.
import Foundation

/// The key keeper of the phone.
public final class PhoneKeys: KeyKeeper {
    private let keys: Keys
    private let marks: Marks
    // One key after the other: a store of keys gives no promise about two at once.
    private let one = NSLock()

    /// `folder`: where marks lie, outside of the diary's folder and of what the phone backs up.
    public init(box: any SecretBox, folder: URL) {
        keys = Keys(box: box)
        marks = Marks(in: folder)
    }

    public func wrap(key: Data) throws -> Data { try told { try keys.wrap(key) } }

    public func unwrap(wrap: Data) throws -> Data { try told { try keys.unwrap(wrap) } }

    public func keepOnly(wrap: Data) throws { try told { try keys.keepOnly(wrap) } }

    public func forget() throws { try told { try keys.forget() } }

    public func keepMark(diary: Data, mark: Data) throws { try told { try marks.keep(mark, of: diary) } }

    public func keptMark(diary: Data) throws -> Data? { try told { try marks.kept(of: diary) } }

    public func forgetMark(diary: Data) throws { try told { try marks.forget(of: diary) } }

    private func told<T>(_ what: () throws -> T) throws -> T {
        try one.withLock {
            do {
                return try what()
            } catch let trouble as BoxTrouble {
                throw switch trouble {
                case .gone: KeeperTrouble.KeyGone
                case .refused: KeeperTrouble.Refused
                case .garbled: KeeperTrouble.Failed
                }
            } catch {
                throw KeeperTrouble.Failed
            }
        }
    }
}
