package frond.home.looked

import org.junit.runners.model.FrameworkMethod
import org.robolectric.RobolectricTestRunner
import org.robolectric.internal.bytecode.InstrumentationConfiguration

/**
 * Runs a test class on the phone's framework with the real library. Every class runs on the one SDK and graphics mode of
 * robolectric.properties: a second sandbox in one JVM would take the library's callbacks away from the first.
 */
class FrondRunner(test: Class<*>) : RobolectricTestRunner(test) {
    override fun createClassLoaderConfig(method: FrameworkMethod): InstrumentationConfiguration =
        InstrumentationConfiguration.Builder(super.createClassLoaderConfig(method))
            // The native half of JNA is there once for the whole process, so its classes must be too.
            .doNotAcquirePackage("com.sun.jna.")
            .build()
}
