<?php
// Answers one request for the folder "site" beside this one; the server built into PHP asks it for each.
$site = realpath(__DIR__ . '/../site');
$types = json_decode(file_get_contents(__DIR__ . '/types.json'), true);
$path = rawurldecode(explode('?', $_SERVER['REQUEST_URI'])[0]);
$file = realpath($site . (substr($path, -1) === '/' ? $path . 'index.html' : $path));
if ($file === false || !is_file($file) || strpos($file, $site . DIRECTORY_SEPARATOR) !== 0) {
    http_response_code(404);
    $file = $site . '/404.html';
}
$type = $types[pathinfo($file, PATHINFO_EXTENSION)] ?? 'application/octet-stream';
header('Content-Type: ' . $type);
header('Content-Length: ' . filesize($file));
header('Cache-Control: no-cache');
readfile($file);
