// Only declarations, from https://developer.apple.com/documentation/security/keychain-items. Nothing of it is ever run or shipped.
// Core Foundation's types are written as what they bridge to, because Linux has no bridge.
import Foundation

public typealias CFString = String
public typealias CFDictionary = [CFString: Any]
public typealias CFTypeRef = AnyObject
public typealias OSStatus = Int32

public let kSecClass: CFString = ""
public let kSecClassGenericPassword: CFString = ""
public let kSecAttrService: CFString = ""
public let kSecAttrAccount: CFString = ""
public let kSecAttrSynchronizable: CFString = ""
public let kSecAttrAccessible: CFString = ""
public let kSecAttrAccessibleWhenUnlockedThisDeviceOnly: CFString = ""
public let kSecUseDataProtectionKeychain: CFString = ""
public let kSecValueData: CFString = ""
public let kSecReturnData: CFString = ""
public let kSecReturnAttributes: CFString = ""
public let kSecMatchLimit: CFString = ""
public let kSecMatchLimitAll: CFString = ""
public let errSecSuccess: OSStatus = 0
public let errSecItemNotFound: OSStatus = -25300

public func SecItemAdd(_ attributes: CFDictionary, _ result: UnsafeMutablePointer<CFTypeRef?>?) -> OSStatus { fatalError() }
public func SecItemCopyMatching(_ query: CFDictionary, _ result: UnsafeMutablePointer<CFTypeRef?>?) -> OSStatus { fatalError() }
public func SecItemDelete(_ query: CFDictionary) -> OSStatus { fatalError() }
