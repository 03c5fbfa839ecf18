// Only declarations, so that what App/ says can be checked for its types where there is no Mac. From Apple's public manual pages:
// sysctlbyname(3) and clock_gettime_nsec_np(3). Nothing of it is ever run or shipped.

public func sysctlbyname(
    _ name: UnsafePointer<CChar>!, _ old: UnsafeMutableRawPointer!, _ oldLength: UnsafeMutablePointer<Int>!,
    _ new: UnsafeMutableRawPointer!, _ newLength: Int
) -> Int32 { fatalError() }

// The clock's name itself is the one that Linux has too.
public func clock_gettime_nsec_np(_ clock: Int32) -> UInt64 { fatalError() }
