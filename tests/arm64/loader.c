/* What bionic's loader does and glibc's does not: it reads the packed table of relocations (DT_ANDROID_RELA, since
   API 23). Read as bionic's linker/linker_reloc_iterators.h does: the letters APS2, then numbers in SLEB128: how many,
   the first place, and groups, each with its size, its flags and what its members share.

   The library runs no code while it is loaded (it has no DT_INIT and no DT_INIT_ARRAY; refused otherwise), so this can be
   done after glibc has put it into memory and before the first call. */
#define _GNU_SOURCE
#include <dlfcn.h>
#include <elf.h>
#include <link.h>
#include <stddef.h>
#include <stdint.h>
#include <string.h>
#include <sys/mman.h>
#include <unistd.h>

#define DT_ANDROID_RELA 0x60000011
#define DT_ANDROID_RELASZ 0x60000012

enum { BY_INFO = 1, BY_OFFSET = 2, BY_ADDEND = 4, HAS_ADDEND = 8 };

struct found {
  const char *name;
  struct dl_phdr_info info;
};

static int find(struct dl_phdr_info *info, size_t size, void *data) {
  struct found *found = data;
  (void)size;
  size_t long_name = strlen(info->dlpi_name), wanted = strlen(found->name);
  if (long_name < wanted || strcmp(info->dlpi_name + long_name - wanted, found->name) != 0) return 0;
  found->info = *info;
  return 1;
}

static int64_t number(const uint8_t **at) {
  int64_t value = 0;
  unsigned shift = 0;
  uint8_t byte;
  do {
    byte = *(*at)++;
    value |= (int64_t)(byte & 127) << shift;
    shift += 7;
  } while (byte & 128);
  if (shift < 64 && (byte & 64)) value |= -((int64_t)1 << shift);
  return value;
}

static void writable(const struct dl_phdr_info *info, int also) {
  size_t page = (size_t)sysconf(_SC_PAGESIZE);
  for (int i = 0; i < info->dlpi_phnum; i++) {
    const ElfW(Phdr) *part = &info->dlpi_phdr[i];
    if (part->p_type != PT_GNU_RELRO) continue;
    uintptr_t from = (info->dlpi_addr + part->p_vaddr) & ~(page - 1);
    uintptr_t to = (info->dlpi_addr + part->p_vaddr + part->p_memsz) & ~(page - 1);
    mprotect((void *)from, to - from, PROT_READ | also);
  }
}

/* How many places were put right; below zero: why not. The library must have been opened already. */
long put_right(void *handle, const char *name) {
  struct found found = {.name = name};
  if (!dl_iterate_phdr(find, &found)) return -1;
  uintptr_t base = found.info.dlpi_addr;
  const ElfW(Dyn) *entry = NULL;
  for (int i = 0; i < found.info.dlpi_phnum; i++)
    if (found.info.dlpi_phdr[i].p_type == PT_DYNAMIC) entry = (void *)(base + found.info.dlpi_phdr[i].p_vaddr);
  const uint8_t *at = NULL, *end = NULL;
  const ElfW(Sym) *symbols = NULL;
  const char *strings = NULL;
  size_t size = 0;
  /* glibc has turned the addresses it knows into real ones; Android's two it leaves as they are in the file. */
  for (; entry && entry->d_tag != DT_NULL; entry++) {
    if (entry->d_tag == DT_ANDROID_RELA) at = (void *)(base + entry->d_un.d_ptr);
    if (entry->d_tag == DT_ANDROID_RELASZ) size = entry->d_un.d_val;
    if (entry->d_tag == DT_SYMTAB) symbols = (void *)entry->d_un.d_ptr;
    if (entry->d_tag == DT_STRTAB) strings = (void *)entry->d_un.d_ptr;
    if (entry->d_tag == DT_INIT || entry->d_tag == DT_INIT_ARRAY || entry->d_tag == DT_RELA) return -2;
  }
  if (!at || !symbols || !strings || memcmp(at, "APS2", 4) != 0) return -3;
  end = at + size;
  at += 4;
  writable(&found.info, PROT_WRITE);
  int64_t left = number(&at), place = number(&at), info = 0, addend = 0, delta = 0;
  long done = 0;
  while (left > 0 && at < end) {
    int64_t members = number(&at), flags = number(&at);
    if (flags & BY_OFFSET) delta = number(&at);
    if (flags & BY_INFO) info = number(&at);
    if ((flags & HAS_ADDEND) && (flags & BY_ADDEND)) addend += number(&at);
    if (!(flags & HAS_ADDEND)) addend = 0;
    for (int64_t i = 0; i < members; i++, left--, done++) {
      place += (flags & BY_OFFSET) ? delta : number(&at);
      if (!(flags & BY_INFO)) info = number(&at);
      if ((flags & HAS_ADDEND) && !(flags & BY_ADDEND)) addend += number(&at);
      uint64_t *where = (uint64_t *)(base + (uint64_t)place);
      switch (ELF64_R_TYPE(info)) {
        case R_AARCH64_RELATIVE:
          *where = base + (uint64_t)addend;
          break;
        case R_AARCH64_ABS64:
        case R_AARCH64_GLOB_DAT: {
          const ElfW(Sym) *symbol = &symbols[ELF64_R_SYM(info)];
          void *address = dlsym(handle, strings + symbol->st_name);
          if (!address && ELF64_ST_BIND(symbol->st_info) != STB_WEAK) return -4;
          *where = (uint64_t)address + (address ? (uint64_t)addend : 0);
          break;
        }
        default:
          return -5;
      }
    }
  }
  writable(&found.info, 0);
  return left == 0 && at <= end ? done : -6;
}
