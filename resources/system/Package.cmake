# The Debian package: `cpack -G DEB` in the folder of a build; .ci/package makes one and has lintian look at it.
set(CPACK_GENERATOR DEB)
set(CPACK_PACKAGE_NAME loopwright)
set(CPACK_PACKAGE_CONTACT ${LOOPWRIGHT_MAINTAINER})
set(CPACK_PACKAGE_DESCRIPTION_SUMMARY "Turn-up records and certificates for telephone lines")
set(CPACK_PACKAGE_DESCRIPTION "Loopwright keeps the job of turning up an ISDN basic-rate or analog line:
it checks identifiers and loops at the desk, leads through the work on site,
decides from recorded evidence, and signs the certificate.

The package has the desktop program and a command line over the same
records, which are one SQLite file. It needs no network.")
set(CPACK_PACKAGING_INSTALL_PREFIX /usr)
set(CPACK_STRIP_FILES ON)
# Whatever the umask of who makes it.
set(CPACK_INSTALL_DEFAULT_DIRECTORY_PERMISSIONS OWNER_READ OWNER_WRITE OWNER_EXECUTE GROUP_READ GROUP_EXECUTE
    WORLD_READ WORLD_EXECUTE)
set(CPACK_DEBIAN_FILE_NAME DEB-DEFAULT)
set(CPACK_DEBIAN_PACKAGE_SECTION comm)
set(CPACK_DEBIAN_PACKAGE_PRIORITY optional)
set(CPACK_DEBIAN_COMPRESSION_TYPE xz)
set(CPACK_DEBIAN_PACKAGE_CONTROL_STRICT_PERMISSION ON)
set(CPACK_DEBIAN_PACKAGE_SHLIBDEPS ON)
# Loaded while they run, which nobody can see in them: the SQL driver; what draws icons; the font that the papers name; the
# words of Qt's own buttons and dialogs in the languages of the window.
set(CPACK_DEBIAN_PACKAGE_DEPENDS "libqt6sql6-sqlite, libqt6svg6, fonts-dejavu-core, qt6-translations-l10n")
# libqt6gui6 itself has the platform of X and the one without a display; these have the others.
set(CPACK_DEBIAN_PACKAGE_RECOMMENDS "qt6-qpa-plugins, qt6-wayland")
include(CPack)
