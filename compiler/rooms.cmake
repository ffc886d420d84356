# A room is a folder of compiler/ built as one library. It names the rooms whose headers it may
# include; every other room's headers are out of its sight, so a leak fails the build.
#
#   bodkin_room(sheet SOURCES creep.cpp … USES measure edition LIBRARIES PkgConfig::CAIRO …)
#
# The sight is made by links: <build>/rooms/sheet/sheet points at compiler/sheet, and a room's
# include path holds <build>/rooms/R for itself and each R that it uses, and nothing else.
set(BODKIN_WARNINGS -Wall -Wextra -Wpedantic -Wconversion -Wshadow)
if(CMAKE_CXX_COMPILER_ID STREQUAL GNU)
  # g++ 12 takes the sum of a literal and a string for an overlapping copy (its bug 105651).
  list(APPEND BODKIN_WARNINGS -Wno-restrict)
endif()

function(bodkin_sees target)
  foreach(room IN LISTS ARGN)
    set(window ${PROJECT_BINARY_DIR}/rooms/${room})
    file(MAKE_DIRECTORY ${window})
    file(CREATE_LINK ${PROJECT_SOURCE_DIR}/compiler/${room} ${window}/${room} SYMBOLIC)
    target_include_directories(${target} PRIVATE ${window})
  endforeach()
endfunction()

function(bodkin_room room)
  cmake_parse_arguments(ROOM "" "" "SOURCES;USES;LIBRARIES" ${ARGN})
  add_library(${room} STATIC ${ROOM_SOURCES})
  target_compile_options(${room} PRIVATE ${BODKIN_WARNINGS})
  bodkin_sees(${room} ${room} ${ROOM_USES})
  target_link_libraries(${room} PUBLIC ${ROOM_USES} ${ROOM_LIBRARIES})
endfunction()
