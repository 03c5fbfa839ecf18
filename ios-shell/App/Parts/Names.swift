// Names that both the core and SwiftUI have. In the app the plain name is SwiftUI's; the core's record is called by its
// module: FrondCore.View, FrondCore.Button and so on.
import SwiftUI

typealias View = SwiftUI.View
typealias Button = SwiftUI.Button
typealias TextField = SwiftUI.TextField
