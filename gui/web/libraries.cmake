# SPDX-License-Identifier: MIT
# For the browser, the libraries are compiled from the sources of the same Debian packages. gui/web.sh has put them
# into the folder BOUGHWORK_SOURCES.

enable_language(C)
set(sdl ${BOUGHWORK_SOURCES}/SDL2)
# Of each part of SDL what is common to all machines, and the one driver for browsers. The page has no use for sound,
# game controllers and sensors, and the C library has SDL's own mathematics.
set(sdl_folders . atomic cpuinfo dynapi events file filesystem/emscripten loadso/dlopen locale locale/emscripten misc
  misc/emscripten power power/emscripten render render/opengles2 render/software stdlib thread thread/generic timer
  timer/unix video video/emscripten video/yuv2rgb)
set(sdl_sources)
foreach(folder IN LISTS sdl_folders)
  file(GLOB sources CONFIGURE_DEPENDS ${sdl}/src/${folder}/*.c)
  list(APPEND sdl_sources ${sources})
endforeach()
add_library(sdl STATIC ${sdl_sources})
target_include_directories(sdl SYSTEM PUBLIC ${sdl}/include)
target_compile_definitions(sdl PUBLIC SDL_AUDIO_DISABLED SDL_JOYSTICK_DISABLED SDL_SENSOR_DISABLED)
target_compile_options(sdl PRIVATE -w)
# Many sources at a time, but for those with names that another has too.
set_target_properties(sdl PROPERTIES UNITY_BUILD ON UNITY_BUILD_BATCH_SIZE 12)
set_source_files_properties(${sdl}/src/render/software/SDL_render_sw.c ${sdl}/src/video/yuv2rgb/yuv_rgb.c
  ${sdl}/src/video/SDL_yuv.c PROPERTIES SKIP_UNITY_BUILD_INCLUSION ON)

set(imgui ${BOUGHWORK_SOURCES}/imgui)
add_library(imgui STATIC ${imgui}/imgui.cpp ${imgui}/imgui_draw.cpp ${imgui}/imgui_tables.cpp
  ${imgui}/imgui_widgets.cpp ${imgui}/backends/imgui_impl_sdlrenderer.cpp
  ${imgui}/misc/cpp/imgui_stdlib.cpp)
target_include_directories(imgui SYSTEM PUBLIC ${imgui} ${imgui}/misc/cpp)
target_link_libraries(imgui PRIVATE sdl)

file(GLOB_RECURSE box2d_sources CONFIGURE_DEPENDS ${BOUGHWORK_SOURCES}/box2d/src/*.cpp)
add_library(box2d STATIC ${box2d_sources})
target_include_directories(box2d SYSTEM PUBLIC ${BOUGHWORK_SOURCES}/box2d/include PRIVATE ${BOUGHWORK_SOURCES}/box2d/src)
target_compile_options(box2d PRIVATE -w)
set_target_properties(box2d PROPERTIES UNITY_BUILD ON UNITY_BUILD_BATCH_SIZE 12)
add_library(box2d::box2d ALIAS box2d)

# Headers alone. They are linked to, since their own folder is full of what belongs to this machine.
add_library(nlohmann_json::nlohmann_json INTERFACE IMPORTED GLOBAL)
target_include_directories(nlohmann_json::nlohmann_json INTERFACE ${BOUGHWORK_SOURCES}/headers)
