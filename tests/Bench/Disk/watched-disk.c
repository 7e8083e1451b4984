/* A layer between a program and its files, preloaded: everything that changes a file under $DISK_UNDER is written
   to $DISK_LOG in the order in which it is done; while the file $DISK_FULL is there, nothing that grows a file has
   room. Only for tests of what a power cut and a full disk leave behind. Linux, glibc. */
#define _GNU_SOURCE
#include <dlfcn.h>
#include <errno.h>
#include <fcntl.h>
#include <limits.h>
#include <pthread.h>
#include <stdarg.h>
#include <stdint.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <sys/stat.h>
#include <sys/uio.h>
#include <unistd.h>

static pthread_mutex_t one = PTHREAD_MUTEX_INITIALIZER;
static const char *under, *full;
static int log_to = -1;

__attribute__((constructor)) static void begin(void) {
    under = getenv("DISK_UNDER");
    full = getenv("DISK_FULL");
    const char *path = getenv("DISK_LOG");
    int (*real)(const char *, int, ...) = dlsym(RTLD_NEXT, "open");
    if (under && path) log_to = real(path, O_WRONLY | O_CREAT | O_APPEND | O_CLOEXEC, 0600);
}

static int is_ours(const char *path) {
    return under && path && strncmp(path, under, strlen(under)) == 0;
}

/* The path of an open file; empty where it is none of ours. */
static void name_of(int fd, char *name) {
    char link[40];
    snprintf(link, sizeof link, "/proc/self/fd/%d", fd);
    ssize_t n = under ? readlink(link, name, PATH_MAX - 1) : -1;
    name[n < 0 ? 0 : n] = 0;
    if (!is_ours(name)) name[0] = 0;
}

static int is_full(void) { return full && access(full, F_OK) == 0; }

/* One line of the log: kind, length of the name, place, length of the data, name, data. */
static void note(char kind, const char *name, uint64_t at, const void *data, uint64_t size) {
    if (log_to < 0) return;
    char head[21];
    uint32_t letters = (uint32_t)strlen(name);
    head[0] = kind;
    memcpy(head + 1, &letters, 4);
    memcpy(head + 5, &at, 8);
    memcpy(head + 13, &size, 8);
    struct iovec parts[3] = {{head, sizeof head}, {(void *)name, letters}, {(void *)data, data ? size : 0}};
    if (writev(log_to, parts, 3) < 0) abort();
}

#define REAL(type, name, ...) \
    static type (*real)(__VA_ARGS__); \
    if (!real) real = dlsym(RTLD_NEXT, name)

static ssize_t put(int fd, const void *data, size_t size, off64_t at, int is_placed) {
    REAL(ssize_t, "pwrite64", int, const void *, size_t, off64_t);
    static ssize_t (*plain)(int, const void *, size_t);
    if (!plain) plain = dlsym(RTLD_NEXT, "write");
    char name[PATH_MAX];
    name_of(fd, name);
    if (!name[0]) return is_placed ? real(fd, data, size, at) : plain(fd, data, size);
    if (is_full()) { errno = ENOSPC; return -1; }
    pthread_mutex_lock(&one);
    if (!is_placed) at = lseek64(fd, 0, SEEK_CUR);
    ssize_t done = is_placed ? real(fd, data, size, at) : plain(fd, data, size);
    int why = errno;
    if (done > 0) note('W', name, (uint64_t)at, data, (uint64_t)done);
    pthread_mutex_unlock(&one);
    errno = why;
    return done;
}

ssize_t pwrite64(int fd, const void *data, size_t size, off64_t at) { return put(fd, data, size, at, 1); }
ssize_t pwrite(int fd, const void *data, size_t size, off_t at) { return put(fd, data, size, at, 1); }
ssize_t write(int fd, const void *data, size_t size) { return put(fd, data, size, 0, 0); }

static int cut(int fd, off64_t size) {
    REAL(int, "ftruncate64", int, off64_t);
    char name[PATH_MAX];
    name_of(fd, name);
    pthread_mutex_lock(&one);
    int done = real(fd, size);
    int why = errno;
    if (done == 0 && name[0]) note('T', name, (uint64_t)size, NULL, 0);
    pthread_mutex_unlock(&one);
    errno = why;
    return done;
}

int ftruncate64(int fd, off64_t size) { return cut(fd, size); }
int ftruncate(int fd, off_t size) { return cut(fd, size); }

static int grow(int fd, off64_t at, off64_t size) {
    REAL(int, "posix_fallocate64", int, off64_t, off64_t);
    char name[PATH_MAX];
    name_of(fd, name);
    if (!name[0]) return real(fd, at, size);
    if (is_full()) return ENOSPC;
    struct stat64 now;
    if (fstat64(fd, &now) == 0 && now.st_size < at + size) return cut(fd, at + size) == 0 ? 0 : errno;
    return 0;
}

int posix_fallocate64(int fd, off64_t at, off64_t size) { return grow(fd, at, size); }
int posix_fallocate(int fd, off_t at, off_t size) { return grow(fd, at, size); }

static int keep(const char *call, int fd) {
    int (*real)(int) = dlsym(RTLD_NEXT, call);
    char name[PATH_MAX];
    name_of(fd, name);
    pthread_mutex_lock(&one);
    int done = real(fd);
    int why = errno;
    if (done == 0 && name[0]) note('S', name, 0, NULL, 0);
    pthread_mutex_unlock(&one);
    errno = why;
    return done;
}

int fsync(int fd) { return keep("fsync", fd); }
int fdatasync(int fd) { return keep("fdatasync", fd); }

int rename(const char *from, const char *to) {
    REAL(int, "rename", const char *, const char *);
    pthread_mutex_lock(&one);
    int done = real(from, to);
    int why = errno;
    if (done == 0 && is_ours(from)) note('R', from, 0, to, strlen(to));
    pthread_mutex_unlock(&one);
    errno = why;
    return done;
}

int unlink(const char *path) {
    REAL(int, "unlink", const char *);
    pthread_mutex_lock(&one);
    int done = real(path);
    int why = errno;
    if (done == 0 && is_ours(path)) note('U', path, 0, NULL, 0);
    pthread_mutex_unlock(&one);
    errno = why;
    return done;
}

static int opened(const char *call, const char *path, int flags, mode_t mode) {
    int (*real)(const char *, int, ...) = dlsym(RTLD_NEXT, call);
    int ours = is_ours(path) && (flags & (O_CREAT | O_TRUNC));
    if (!ours) return real(path, flags, mode);
    pthread_mutex_lock(&one);
    int there = access(path, F_OK) == 0;
    if (!there && is_full()) {
        pthread_mutex_unlock(&one);
        errno = ENOSPC;
        return -1;
    }
    int fd = real(path, flags, mode);
    int why = errno;
    if (fd >= 0 && !there) note('C', path, 0, NULL, 0);
    if (fd >= 0 && there && (flags & O_TRUNC)) note('T', path, 0, NULL, 0);
    pthread_mutex_unlock(&one);
    errno = why;
    return fd;
}

#define OPEN(call) \
    int call(const char *path, int flags, ...) { \
        mode_t mode = 0; \
        if (flags & O_CREAT) { \
            va_list more; \
            va_start(more, flags); \
            mode = va_arg(more, mode_t); \
            va_end(more); \
        } \
        return opened(#call, path, flags, mode); \
    }

OPEN(open)
OPEN(open64)
