# Serves the folder "site" beside this one to this computer alone, and opens it. Needs nothing that Windows 10 has not.
$ErrorActionPreference = 'Stop'
$port = if ($env:PORT) { $env:PORT } else { 8471 }
$site = (Resolve-Path (Join-Path $PSScriptRoot '..\site')).ProviderPath
$types = Get-Content -Raw (Join-Path $PSScriptRoot 'types.json') | ConvertFrom-Json
$address = "http://localhost:$port/"

# Only this name may be listened to without an administrator.
$listener = New-Object System.Net.HttpListener
$listener.Prefixes.Add($address)
try {
  $listener.Start()
} catch {
  Write-Host "Port $port is taken. If the site is open already, go on in that window. If not, restart the computer and try again."
  exit 1
}
Write-Host "The site is at $address"
Write-Host 'Leave this window open. Closing it stops the site.'
if (-not $env:NO_BROWSER) { Start-Process $address }

while ($listener.IsListening) {
  $context = $listener.GetContext()
  $response = $context.Response
  try {
    $path = [Uri]::UnescapeDataString($context.Request.Url.AbsolutePath)
    if ($path.EndsWith('/')) { $path += 'index.html' }
    $file = [IO.Path]::GetFullPath((Join-Path $site $path.TrimStart('/')))
    if (-not $file.StartsWith("$site\") -or -not [IO.File]::Exists($file)) {
      $response.StatusCode = 404
      $file = Join-Path $site '404.html'
    }
    $type = $types.([IO.Path]::GetExtension($file).TrimStart('.'))
    $response.ContentType = if ($type) { $type } else { 'application/octet-stream' }
    $response.Headers.Add('Cache-Control', 'no-cache')
    $body = [IO.File]::ReadAllBytes($file)
    $response.ContentLength64 = $body.Length
    if ($context.Request.HttpMethod -ne 'HEAD') {
      $response.OutputStream.Write($body, 0, $body.Length)
    }
  } catch {
    # The browser has gone on to another page.
  } finally {
    try { $response.Close() } catch { }
  }
}
