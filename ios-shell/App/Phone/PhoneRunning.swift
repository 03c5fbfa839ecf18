// The phone's running time. Decides where it is read; leaves to FrondHome how a moment is put together.
import Darwin
import Foundation
import FrondHome

/// Counted from the phone's start, sleep included, and moved by no clock. It stays in the app: see PrivacyInfo.xcprivacy.
struct PhoneRunning: RunningTime {
    /// The system's own UUID of this start. Where the phone gives none the name is always the same: the core then takes a
    /// restart for a clock that was changed and asks the person, which is the careful side.
    var start: String {
        var size = 0
        guard sysctlbyname("kern.bootsessionuuid", nil, &size, nil, 0) == 0, size > 1 else { return "unknown" }
        var name = [UInt8](repeating: 0, count: size)
        guard sysctlbyname("kern.bootsessionuuid", &name, &size, nil, 0) == 0 else { return "unknown" }
        return String(decoding: name.prefix { $0 != 0 }, as: UTF8.self)
    }

    var millis: UInt64 { clock_gettime_nsec_np(CLOCK_MONOTONIC_RAW) / 1_000_000 }
}
