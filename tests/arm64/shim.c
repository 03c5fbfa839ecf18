/* What a library for Android asks of bionic and glibc calls otherwise or does otherwise: a libc.so over glibc, so that
   the machine code of the library can run under qemu. Everything else is glibc's own, found through its libc.so.6.
   It says nothing about a phone's own libc. */
#include <errno.h>
#include <string.h>
#include <unistd.h>

int *__errno(void) { return __errno_location(); }

/* No property is set. */
int __system_property_get(const char *name, char *value) {
  (void)name;
  value[0] = 0;
  return 0;
}

void android_set_abort_message(const char *message) { (void)message; }

/* POSIX's strerror_r, as bionic has it: glibc gives that another name. */
extern int __xpg_strerror_r(int error, char *buffer, size_t size);
int strerror_r(int error, char *buffer, size_t size) { return __xpg_strerror_r(error, buffer, size); }

/* In glibc it is no part of the shared library. Nothing here forks. */
int pthread_atfork(void (*prepare)(void), void (*parent)(void), void (*child)(void)) {
  (void)prepare, (void)parent, (void)child;
  return 0;
}
